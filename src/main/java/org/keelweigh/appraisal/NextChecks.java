package org.keelweigh.appraisal;

import java.util.List;

/**
 * What to check next.
 *
 * @param outlooks every check that could change the choice, the most gain for a minute first
 * @param visit the checks of one visit, in their running order; empty when nothing is worth it
 * @param visitMinutes how long they take together
 * @param visitGain what they are expected to gain together, in money
 * @param perfect expected gain of knowing every hidden thing about every boat, in money: no check can gain more
 * @param sentence all that in words
 */
public record NextChecks(
        List<CheckOutlook> outlooks,
        List<CheckOutlook> visit,
        double visitMinutes,
        double visitGain,
        double perfect,
        String sentence) {

    public NextChecks {
        outlooks = List.copyOf(outlooks);
        visit = List.copyOf(visit);
    }

    /** Tells whether no check left is worth the trip. */
    public boolean nothingWorthwhile() {
        return visit.isEmpty();
    }
}
