package org.keelweigh.haul;

import org.jspecify.annotations.Nullable;

/**
 * Somebody who brings the boat to the water.
 *
 * @param name what people call them
 * @param pullLimitN what they keep up without strain over about 60 m, newtons, above 0
 * @param handLimitN the greatest hand load they want to lift at the bow, newtons, above 0
 * @param assumed whether nobody gave the pull limit
 */
public record Hauler(String name, double pullLimitN, double handLimitN, boolean assumed) {

    /**
     * What an average adult keeps up over about 60 m, newtons: estimate from published ergonomics tables, as
     * remembered.
     */
    public static final double USUAL_PULL_N = 120;
    /** A hand load that tires fast, newtons: common practice, no source. */
    public static final double USUAL_HAND_N = 150;
    /** By how much a start of a few seconds may pass the steady limit: estimate. */
    static final double SHORT_EFFORT = 2;

    private static final double[] DISTANCE_M = {5, 60, 200, 500};
    private static final double[] SHARE_OF_LIMIT = {SHORT_EFFORT, 1, 0.8, 0.6};

    public Hauler {
        if (!(pullLimitN > 0) || !(handLimitN > 0) || Double.isInfinite(pullLimitN + handLimitN)) {
            throw new IllegalArgumentException(
                    "Pull and hand limit of " + name + " must be above 0 N, not " + pullLimitN + " and " + handLimitN);
        }
    }

    /** Makes a hauler from what is known; {@code null} gives the usual limit, marked as an assumption. */
    public static Hauler of(String name, @Nullable Double pullLimitN) {
        return new Hauler(name, pullLimitN == null ? USUAL_PULL_N : pullLimitN, USUAL_HAND_N, pullLimitN == null);
    }

    /**
     * Tells the share of the limit that can be kept up over a distance: 1 up to 60 m, 0.8 at 200 m, 0.6 from 500 m on
     * (the stretch is then done with rests), straight lines between. Estimate.
     */
    public static double distanceFactor(double distanceM) {
        for (int i = 2; i < DISTANCE_M.length; i++) {
            if (distanceM < DISTANCE_M[i]) {
                double part = Math.max(0, distanceM - DISTANCE_M[i - 1]) / (DISTANCE_M[i] - DISTANCE_M[i - 1]);
                return SHARE_OF_LIMIT[i - 1] + part * (SHARE_OF_LIMIT[i] - SHARE_OF_LIMIT[i - 1]);
            }
        }
        return SHARE_OF_LIMIT[SHARE_OF_LIMIT.length - 1];
    }

    /** Tells the pull divided by what this person keeps up over the distance; above 1 is too much. */
    public double ratio(double pullN, double distanceM) {
        return Math.max(0, pullN) / (pullLimitN * distanceFactor(distanceM));
    }

    /**
     * Tells how far this person gets before resting: the distance at which the pull equals what they keep up; a pull of
     * twice the limit lasts 5 m. At most 500 m are told, and 0 beyond twice the limit. Estimate.
     */
    public double restAfterM(double pullN) {
        double share = pullN / pullLimitN;
        if (share > SHORT_EFFORT) {
            return 0;
        }
        for (int i = 1; i < DISTANCE_M.length; i++) {
            if (share > SHARE_OF_LIMIT[i]) {
                double part = (SHARE_OF_LIMIT[i - 1] - share) / (SHARE_OF_LIMIT[i - 1] - SHARE_OF_LIMIT[i]);
                return DISTANCE_M[i - 1] + part * (DISTANCE_M[i] - DISTANCE_M[i - 1]);
            }
        }
        return DISTANCE_M[DISTANCE_M.length - 1];
    }
}
