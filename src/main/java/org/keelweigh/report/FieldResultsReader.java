package org.keelweigh.report;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.Coded;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.InspectionCatalogue;
import org.keelweigh.condition.Outcome;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Documents;
import org.keelweigh.shortlist.Facts;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;

/** Reads the file that a field sheet sends back. Whatever is wrong with it is said in a sentence, and nothing is taken. */
public final class FieldResultsReader {

    /** The largest file that is read, bytes. */
    public static final int MOST_BYTES = 512 * 1024;

    static final String FORMAT = "keelweigh-field-results";
    static final int VERSION = 1;
    static final int LONGEST_NOTE = 2000;

    private static final int MOST_BOATS = 50;
    private static final double GREATEST_MEASURE = 1e6;

    private final InspectionCatalogue inspection;

    /** Prepares reading by a catalogue. */
    public FieldResultsReader(InspectionCatalogue inspection) {
        this.inspection = inspection;
    }

    /** Stops reading with a sentence. */
    private static final class Unusable extends Exception {
        private static final long serialVersionUID = 1L;

        Unusable(String sentence) {
            super(sentence);
        }
    }

    /** Reads results that have to belong to boats of a shortlist. */
    public FieldResults.Reading read(byte[] bytes, Facts facts) {
        try {
            if (bytes.length > MOST_BYTES) {
                throw new Unusable("This file is larger than results of a field sheet can be.");
            }
            return new FieldResults.Reading.Readable(results(tree(bytes), facts));
        } catch (Unusable e) {
            return new FieldResults.Reading.Refused(String.valueOf(e.getMessage()));
        }
    }

    private static JsonNode tree(byte[] bytes) throws Unusable {
        JsonNode root;
        try {
            root = Documents.read(new String(bytes, StandardCharsets.UTF_8), JsonNode.class);
        } catch (JacksonException e) {
            throw new Unusable("This is not a file of field results: it cannot be read.");
        }
        if (root == null || !root.path("format").asString("").equals(FORMAT)) {
            throw new Unusable("This is not a file of field results. Choose the file that the field sheet saved.");
        }
        if (root.path("formatVersion").asInt(0) != VERSION) {
            throw new Unusable("These results were made by another version of the sheet. Make a new sheet, please.");
        }
        return root;
    }

    private FieldResults results(JsonNode root, Facts facts) throws Unusable {
        JsonNode boats = root.path("boats");
        if (!boats.isArray() || boats.isEmpty() || boats.size() > MOST_BOATS) {
            throw new Unusable("These results name no boat, or too many.");
        }
        List<FieldResults.BoatResults> all = new ArrayList<>();
        Set<CandidateId> seen = new HashSet<>();
        for (JsonNode boat : boats) {
            FieldResults.BoatResults read = boat(boat, facts);
            if (!seen.add(read.boat())) {
                throw new Unusable("These results name the same boat twice.");
            }
            all.add(read);
        }
        return new FieldResults(all);
    }

    private FieldResults.BoatResults boat(JsonNode node, Facts facts) throws Unusable {
        CandidateId id = id(node.path("boat").asString(""))
                .filter(each -> facts.candidate(each).isPresent())
                .orElseThrow(() -> new Unusable("These results belong to a boat that is not on this shortlist."));
        long version = node.path("version").asLong(-1);
        String tag = SheetTag.of(id, version, inspection.checks()).hex();
        if (version < 0
                || version > facts.candidate(id).orElseThrow().version()
                || !tag.equals(node.path("tag").asString(""))) {
            throw new Unusable("These results belong to another sheet: boat, version and mark do not fit together.");
        }
        return new FieldResults.BoatResults(id, version, findings(node.path("findings")));
    }

    private List<Finding> findings(JsonNode nodes) throws Unusable {
        int most = inspection.checks().size();
        if (!nodes.isArray() || nodes.size() > most) {
            throw new Unusable("These results hold " + nodes.size() + " findings on one boat; a sheet has at most "
                    + most + " checks.");
        }
        List<Finding> findings = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (JsonNode node : nodes) {
            Finding finding = finding(node);
            if (!seen.add(finding.check())) {
                throw new Unusable("These results name the check \"" + finding.check() + "\" twice.");
            }
            findings.add(finding);
        }
        return findings;
    }

    private Finding finding(JsonNode node) throws Unusable {
        Check check = inspection
                .check(node.path("check").asString(""))
                .orElseThrow(() -> new Unusable("These results name a check that does not exist here."));
        try {
            Outcome outcome = Coded.parse(Outcome.class, node.path("outcome").asString(""));
            return new Finding(check.id(), outcome, FieldCode.method(check), measured(node), note(node), null);
        } catch (IllegalArgumentException e) {
            throw new Unusable("The result of \"" + check.title() + "\" is none that exists.");
        }
    }

    private static @Nullable Double measured(JsonNode node) throws Unusable {
        JsonNode value = node.path("measured");
        if (value.isMissingNode() || value.isNull()) {
            return null;
        }
        double number = value.isNumber() ? value.asDouble() : Double.NaN;
        if (!(Math.abs(number) <= GREATEST_MEASURE)) {
            throw new Unusable("A measure in these results is not a number that can be.");
        }
        return number;
    }

    private static @Nullable String note(JsonNode node) throws Unusable {
        String note = node.path("note").asString("").strip();
        if (note.length() > LONGEST_NOTE) {
            throw new Unusable("A note in these results is longer than " + LONGEST_NOTE + " characters.");
        }
        String plain = note.codePoints()
                .filter(point -> point >= ' ' || point == '\n')
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        return plain.isEmpty() ? null : plain;
    }

    private static Optional<CandidateId> id(String text) {
        try {
            return Optional.of(new CandidateId(UUID.fromString(text)));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
