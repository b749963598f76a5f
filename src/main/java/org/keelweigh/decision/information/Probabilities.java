package org.keelweigh.decision.information;

/** Checks of probabilities. */
final class Probabilities {

    /** Rounding allowed in sums of probabilities that were computed, not typed. */
    static final double SLACK = 1e-9;

    private Probabilities() {}

    static void requireDistribution(String name, double[] probability) {
        double sum = 0;
        for (double p : probability) {
            if (!(p >= 0 && p <= 1 + SLACK)) {
                throw new IllegalArgumentException(name + " must be 0 to 1 but one is " + p);
            }
            sum += p;
        }
        if (!(Math.abs(sum - 1) <= SLACK)) {
            throw new IllegalArgumentException(name + " must add up to 1 but add up to " + sum);
        }
    }

    static double mean(double[] probability, double[] value) {
        double mean = 0;
        for (int i = 0; i < probability.length; i++) {
            // A value of minus infinity at probability zero must not spoil the mean
            mean += probability[i] == 0 ? 0 : probability[i] * value[i];
        }
        return mean;
    }
}
