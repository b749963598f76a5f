package org.keelweigh.condition;

import java.util.HashMap;
import java.util.Map;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.catalogue.Row;

/** How sentences name checks, from the table {@code fault-phrases.csv}. */
final class FaultPhrases {

    private final InspectionCatalogue inspections;
    private final Map<String, String> faults = new HashMap<>();
    private final Map<String, String> parts = new HashMap<>();

    private FaultPhrases(InspectionCatalogue inspections) {
        this.inspections = inspections;
    }

    static FaultPhrases read(Catalogue catalogue, InspectionCatalogue inspections) {
        FaultPhrases phrases = new FaultPhrases(inspections);
        for (Row row : catalogue.table("fault-phrases.csv").unique("check").rows()) {
            String check = row.text("check");
            if (inspections.check(check).isEmpty()) {
                throw row.complaint("there is no check \"" + check + "\"");
            }
            phrases.faults.put(check, row.text("phrase"));
            row.optional("part").ifPresent(part -> phrases.parts.put(check, part));
        }
        return phrases;
    }

    /** Names what the check looks for. */
    String fault(String check) {
        return faults.getOrDefault(
                check, inspections.check(check).map(Check::title).orElse(check));
    }

    /** Names what was found. */
    String found(String check, Outcome outcome) {
        String part = parts.getOrDefault(check, fault(check));
        return switch (outcome) {
            case FINE -> part + " found fine";
            case MINOR -> "a minor finding at " + part;
            case MAJOR -> "a major finding at " + part;
            case STOP -> "a grave finding at " + part;
            case NOT_FITTED -> part + " not fitted";
        };
    }
}
