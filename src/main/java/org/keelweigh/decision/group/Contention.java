package org.keelweigh.decision.group;

/**
 * What people's different weights for one criterion can do to the choice.
 *
 * @param criterion column
 * @param lowestShare smallest weight anyone gives it, 0 to 1
 * @param highestShare largest weight anyone gives it, 0 to 1
 * @param spread how far the alternatives differ in it, in value points
 */
public record Contention(int criterion, double lowestShare, double highestShare, double spread) {

    /**
     * Returns disagreement times spread: the value points by which the difference can move a comparison of two
     * alternatives. 0 if all agree or the alternatives do not differ, and then there is nothing to argue about.
     */
    public double points() {
        return (highestShare - lowestShare) * spread;
    }
}
