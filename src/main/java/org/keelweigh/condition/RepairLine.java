package org.keelweigh.condition;

import org.keelweigh.quantity.Estimate;

/**
 * One line of the repair list.
 *
 * @param check the id of the check that found the fault
 * @param group what the repair is counted with
 * @param outcome how bad it is
 * @param cost what the whole repair costs, in the money of the catalogue; so quotes have to be given in it too
 * @param expectedShare the share of it expected to be spent, 0 to 1; 0 where a larger repair in the group cures it too
 * @param reason a sentence for people
 */
public record RepairLine(
        String check, RepairGroup group, Outcome outcome, Estimate cost, double expectedShare, String reason) {

    /** Tells the expected spend at each of the three points. */
    public Estimate expected() {
        return cost.times(expectedShare);
    }
}
