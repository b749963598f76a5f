package org.keelweigh.condition;

import org.keelweigh.catalogue.Row;

/**
 * A history that nobody tells and that bears on many faults at once, from the table {@code causes.csv}.
 *
 * @param id its id
 * @param label its name in plain words
 * @param phrase how a sentence names it, such as "stored in the sun"
 * @param meaning what counts as it
 * @param prior chance that it holds for a used boat of which nothing is known, in (0, 1)
 * @param overlap how much its signals overlap, 0 to 1; see {@link BeliefNetwork}
 * @param applies to which boats it applies
 * @param source where the figures come from
 */
public record HiddenCause(
        String id,
        String label,
        String phrase,
        String meaning,
        double prior,
        double overlap,
        Applies applies,
        String source) {

    private static final double LEAST_PRIOR = 0.001;

    static HiddenCause of(Row row) {
        return new HiddenCause(
                row.text("cause"),
                row.text("label"),
                row.text("phrase"),
                row.text("meaning"),
                row.number("prior", LEAST_PRIOR, 1 - LEAST_PRIOR),
                row.number("overlap", 0, 1),
                Applies.of(row),
                row.text("source"));
    }
}
