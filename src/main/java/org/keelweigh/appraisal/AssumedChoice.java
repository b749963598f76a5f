package org.keelweigh.appraisal;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Facts;

/**
 * A choice from a closed list that nobody made, with everything it could be.
 *
 * @param field the field's path, as in {@link Assumption}
 * @param boat the boat it is about; empty for trip and people
 * @param name what it is, for people
 * @param assumed what is assumed, in words
 * @param others what else it could be
 */
record AssumedChoice(String field, Optional<CandidateId> boat, String name, String assumed, List<Other> others) {

    AssumedChoice {
        others = List.copyOf(others);
    }

    /**
     * One thing that it could be.
     *
     * @param label the value in words
     * @param set tells the facts with the value chosen
     */
    record Other(String label, UnaryOperator<Facts> set) {}
}
