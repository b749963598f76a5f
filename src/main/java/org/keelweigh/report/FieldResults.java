package org.keelweigh.report;

import java.util.List;
import org.keelweigh.condition.Finding;
import org.keelweigh.shortlist.CandidateId;

/**
 * What came back from a field sheet.
 *
 * @param boats the boats on it with what was found
 */
public record FieldResults(List<BoatResults> boats) {

    public FieldResults {
        boats = List.copyOf(boats);
    }

    /**
     * What was found on one boat.
     *
     * @param boat which boat
     * @param version the state of the boat that the sheet was made from
     * @param findings the checks that were made, each once
     */
    public record BoatResults(CandidateId boat, long version, List<Finding> findings) {
        public BoatResults {
            findings = List.copyOf(findings);
        }
    }

    /** What came of reading results. */
    public sealed interface Reading {

        /**
         * They can be brought together with what is known.
         *
         * @param results what they say
         */
        record Readable(FieldResults results) implements Reading {}

        /**
         * They cannot be used.
         *
         * @param sentence why, and what to do
         */
        record Refused(String sentence) implements Reading {}
    }
}
