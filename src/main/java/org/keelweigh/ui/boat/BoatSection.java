package org.keelweigh.ui.boat;

import java.util.Arrays;
import java.util.function.Function;

/** The sections of a boat's page, each with an address of its own. */
enum BoatSection {
    FACTS("facts", "Facts", FactsPart::new),
    INSPECTION("inspection", "Inspection", InspectionPart::new),
    COSTS("costs", "Costs", CostsPart::new),
    HAUL("haul", "Haul and lift", HaulPart::new),
    FIT("fit", "Fit", FitPart::new),
    TRUST("trust", "Trust", TrustPart::new),
    PHOTOS("photos", "Photos", PhotosPart::new),
    HISTORY("history", "History", HistoryPart::new);

    private final String code;
    private final String label;
    private final Function<BoatDesk, BoatPart> make;

    BoatSection(String code, String label, Function<BoatDesk, BoatPart> make) {
        this.code = code;
        this.label = label;
        this.make = make;
    }

    /** Finds a section by the last part of an address; anything unknown shows the facts. */
    static BoatSection of(String code) {
        return Arrays.stream(values())
                .filter(each -> each.code.equals(code))
                .findFirst()
                .orElse(FACTS);
    }

    String code() {
        return code;
    }

    String label() {
        return label;
    }

    BoatPart make(BoatDesk desk) {
        return make.apply(desk);
    }
}
