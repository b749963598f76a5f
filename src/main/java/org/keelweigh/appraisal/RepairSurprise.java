package org.keelweigh.appraisal;

import java.util.Arrays;

/**
 * How far unseen repairs go above their mean in one future of ten.
 *
 * @param amount the 90th percentile less the mean, at least 0, in money
 * @param error its standard error: half the distance between the order statistics one standard deviation of their rank apart,
 *     {@code √(0.1 · 0.9 / N)}; free of any assumption about the distribution
 */
record RepairSurprise(double amount, double error) {

    private static final double P90 = 0.9;

    /** Tells it of drawn sums of repairs, which stay as they are. */
    static RepairSurprise of(double[] repairs) {
        double[] sorted = repairs.clone();
        Arrays.sort(sorted);
        double mean = Arrays.stream(sorted).sum() / sorted.length;
        double apart = Math.sqrt(P90 * (1 - P90) / sorted.length);
        double error = BoatFutures.quantile(sorted, Math.min(1, P90 + apart))
                - BoatFutures.quantile(sorted, Math.max(0, P90 - apart));
        return new RepairSurprise(Math.max(0, BoatFutures.quantile(sorted, P90) - mean), error / 2);
    }
}
