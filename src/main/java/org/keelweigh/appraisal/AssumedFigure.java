package org.keelweigh.appraisal;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.DoubleFunction;
import org.keelweigh.decision.robust.Tornado;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Facts;

/**
 * A figure that nobody gave, with the range in which it plausibly lies.
 *
 * @param field the field's path, as in {@link Assumption}
 * @param boat the boat it is about; empty for trip and people
 * @param name what it is, for people
 * @param low plausible low end, in the unit of the field
 * @param base what is assumed
 * @param high plausible high end
 * @param write writes a value with its unit
 * @param set tells the facts with the figure typed in
 */
record AssumedFigure(
        String field,
        Optional<CandidateId> boat,
        String name,
        double low,
        double base,
        double high,
        DoubleFunction<String> write,
        BiFunction<Facts, Double, Facts> set) {

    Tornado.Factor factor() {
        return new Tornado.Factor(name, low, base, high);
    }
}
