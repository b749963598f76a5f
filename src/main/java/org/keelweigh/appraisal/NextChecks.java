package org.keelweigh.appraisal;

import java.util.List;
import java.util.stream.Stream;

/**
 * What to check next.
 *
 * @param outlooks every check that could change the choice, the most gain for a minute first
 * @param visit the checks of one visit, in their running order; empty when nothing is worth it
 * @param visitMinutes how long they take together
 * @param visitGain what they are expected to gain together, in money
 * @param everything expected gain of making every check left on every boat, in money, at the stated weights
 * @param sentence all that in words
 */
public record NextChecks(
        List<CheckOutlook> outlooks,
        List<CheckOutlook> visit,
        double visitMinutes,
        double visitGain,
        double everything,
        String sentence) {

    public NextChecks {
        outlooks = List.copyOf(outlooks);
        visit = List.copyOf(visit);
    }

    /** Tells the outlooks on one boat: those of the visit first, in its order, then the most gain for a minute. */
    public List<CheckOutlook> on(int boat) {
        return Stream.concat(visit.stream(), outlooks.stream())
                .filter(each -> each.boat() == boat)
                .distinct()
                .toList();
    }

    /** Tells whether no check left is worth the trip. */
    public boolean nothingWorthwhile() {
        return visit.isEmpty();
    }
}
