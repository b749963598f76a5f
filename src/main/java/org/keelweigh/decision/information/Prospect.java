package org.keelweigh.decision.information;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What the expected value of one alternative may become once its tests have reported: a discrete distribution. Made of
 * every combination of reports on that alternative, dependent as they may be; different alternatives are independent.
 */
public final class Prospect {

    private final double[] probability;
    private final double[] value;

    /**
     * @param probability chance of each combination of reports, adding up to 1
     * @param value expected value after it, finite
     */
    public Prospect(double[] probability, double[] value) {
        Probabilities.requireDistribution("chances of reports", probability);
        if (value.length != probability.length || !Arrays.stream(value).allMatch(Double::isFinite)) {
            throw new IllegalArgumentException("there must be " + probability.length + " finite values");
        }
        int[] order = IntStream.range(0, value.length)
                .boxed()
                .sorted((i, j) -> Double.compare(value[i], value[j]))
                .mapToInt(i -> i)
                .toArray();
        this.probability = Arrays.stream(order).mapToDouble(i -> probability[i]).toArray();
        this.value = Arrays.stream(order).mapToDouble(i -> value[i]).toArray();
    }

    /** An alternative that no test touches. */
    public static Prospect certain(double value) {
        return new Prospect(new double[] {1}, new double[] {value});
    }

    /** Expected value now. */
    public double mean() {
        return Probabilities.mean(probability, value);
    }

    /** Chance that the value becomes at most {@code limit}. */
    public double chanceAtMost(double limit) {
        double sum = 0;
        for (int i = 0; i < value.length && value[i] <= limit; i++) {
            sum += probability[i];
        }
        return Math.min(1, sum);
    }

    /**
     * Computes the expected gain of choosing after all reports: {@code E max_a X_a − max_a E X_a}, exact, from
     * {@code P(max <= x) = Π_a P(X_a <= x)}.
     *
     * @param alternatives at least one
     */
    public static double gain(List<Prospect> alternatives) {
        double[] levels = alternatives.stream()
                .flatMapToDouble(prospect -> Arrays.stream(prospect.value))
                .sorted()
                .distinct()
                .toArray();
        double expected = levels[0];
        for (int i = 1; i < levels.length; i++) {
            double below = 1;
            for (Prospect prospect : alternatives) {
                below *= prospect.chanceAtMost(levels[i - 1]);
            }
            expected += (levels[i] - levels[i - 1]) * (1 - below);
        }
        double best = alternatives.stream().mapToDouble(Prospect::mean).max().orElseThrow();
        return Math.max(0, expected - best);
    }
}
