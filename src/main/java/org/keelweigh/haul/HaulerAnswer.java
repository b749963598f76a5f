package org.keelweigh.haul;

import java.util.List;

/**
 * What the way asks of one person.
 *
 * @param hauler the person
 * @param ratio steady pull divided by what this person keeps up, on the worst stretch; above 1 is too much
 * @param effort how hard it is for this person by whatever is hardest, as a share of the limit for it: the steady pull, the
 *     weight in the hand, setting off, holding back or a kerb; at most 2, and 2 where
 *     it cannot be done by that cart at all. One person alone can do it only up to 1
 * @param restAfterM how far they get on the worst stretch before resting, metres, at most 500
 * @param needsHelp why they need a second person, as sentences; empty when they do not
 */
public record HaulerAnswer(Hauler hauler, double ratio, double effort, double restAfterM, List<String> needsHelp) {

    public HaulerAnswer {
        needsHelp = List.copyOf(needsHelp);
    }

    /** Tells whether this person can do it alone. */
    public boolean alone() {
        return needsHelp.isEmpty();
    }

    HaulerAnswer withEffort(double other) {
        return new HaulerAnswer(hauler, ratio, other, restAfterM, needsHelp);
    }
}
