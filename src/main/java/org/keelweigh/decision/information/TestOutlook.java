package org.keelweigh.decision.information;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What a test of one alternative is expected to bring before it is made.
 *
 * <p>{@code gain = Σ_r P(r)·max(v_a|r, best other) − max(v_a, best other)}: exact, since only the tested alternative
 * moves. With sampled weights it is the mean over weights of the gain to a person who will then choose by those weights;
 * the gain at mean weights would be less.
 *
 * @param gain expected gain, in the unit of the values, at least 0
 * @param gainError standard error of the gain over weight samples; 0 for one set of weights
 * @param changeChance chance that the report changes the choice
 * @param outcomes one per report
 */
public record TestOutlook(double gain, double gainError, double changeChance, List<Report> outcomes) {

    /**
     * One possible report.
     *
     * @param probability chance of the report
     * @param choice the alternative chosen after it, most often over weight samples
     * @param changeShare share of weight samples in which it changes the choice
     */
    public record Report(double probability, int choice, double changeShare) {}

    /** Rounding allowed between the value now and the mean of the values after the reports, relative to their size. */
    private static final double CONSISTENCY = 1e-6;

    public TestOutlook {
        outcomes = List.copyOf(outcomes);
    }

    /** True when no report can change the choice, so that the test is worth nothing for it. */
    public boolean cannotChangeTheChoice() {
        return changeChance == 0;
    }

    /**
     * Looks ahead with one set of weights.
     *
     * @param baseValues expected value of each alternative now; minus infinity for one that is ruled out
     * @param alternative the one tested
     * @param reportProbability chance of each report
     * @param valueGivenReport expected value of the tested alternative after each report; their mean must be its value
     *     now
     * @throws IllegalArgumentException when it is not, or chances do not add up to 1
     */
    public static TestOutlook evaluate(
            double[] baseValues, int alternative, double[] reportProbability, double[] valueGivenReport) {
        return evaluate(new double[][] {baseValues}, alternative, reportProbability, new double[][] {valueGivenReport});
    }

    /**
     * Looks ahead over sampled weights.
     *
     * @param baseValues {@code [weight sample][alternative]}
     * @param valueGivenReport {@code [weight sample][report]}
     */
    public static TestOutlook evaluate(
            double[][] baseValues, int alternative, double[] reportProbability, double[][] valueGivenReport) {
        Probabilities.requireDistribution("chances of reports", reportProbability);
        if (baseValues.length == 0 || valueGivenReport.length != baseValues.length) {
            throw new IllegalArgumentException("values now are for " + baseValues.length
                    + " weight samples, values after a report for " + valueGivenReport.length);
        }
        Sum sum = new Sum(baseValues[0].length, alternative, reportProbability);
        for (int s = 0; s < baseValues.length; s++) {
            sum.add(baseValues[s], valueGivenReport[s]);
        }
        return sum.outlook(baseValues.length);
    }

    private static final class Sum {

        private final int alternative;
        private final double[] probability;
        private final int[][] chosen;
        private final int[] changed;
        private double gain;
        private double squares;

        private Sum(int alternatives, int alternative, double[] probability) {
            if (alternative < 0 || alternative >= alternatives) {
                throw new IllegalArgumentException(
                        "tested alternative must be 0 to " + (alternatives - 1) + " but is " + alternative);
            }
            this.alternative = alternative;
            this.probability = probability;
            chosen = new int[probability.length][alternatives];
            changed = new int[probability.length];
        }

        private void add(double[] base, double[] given) {
            double now = base[alternative];
            boolean out = now == Double.NEGATIVE_INFINITY;
            requireConsistent(now, given);
            int other = bestOther(base);
            double bestOther = other < 0 ? Double.NEGATIVE_INFINITY : base[other];
            boolean first = !out && now >= bestOther;
            double sampleGain = 0;
            for (int r = 0; r < probability.length; r++) {
                boolean chosenThen = !out && (given[r] > bestOther || first && given[r] == bestOther);
                chosen[r][chosenThen || other < 0 ? alternative : other]++;
                if (chosenThen != first && probability[r] > 0) {
                    changed[r]++;
                    sampleGain += probability[r] * Math.abs(given[r] - bestOther);
                }
            }
            gain += sampleGain;
            squares += sampleGain * sampleGain;
        }

        /** Gains are sums of what each changing report saves, so they are never negative by rounding. */
        private TestOutlook outlook(int samples) {
            double mean = gain / samples;
            double variance = Math.max(0, squares / samples - mean * mean);
            double changeChance = 0;
            List<Report> reports = new ArrayList<>();
            for (int r = 0; r < probability.length; r++) {
                double share = changed[r] / (double) samples;
                changeChance += probability[r] * share;
                reports.add(new Report(probability[r], mostOften(chosen[r]), share));
            }
            double error = samples == 1 ? 0 : Math.sqrt(variance / (samples - 1));
            return new TestOutlook(mean, error, changeChance, reports);
        }

        private void requireConsistent(double now, double[] given) {
            if (given.length != probability.length) {
                throw new IllegalArgumentException(
                        "values must be for " + probability.length + " reports but are " + given.length);
            }
            double mean = Probabilities.mean(probability, given);
            double size = Math.max(
                    1,
                    Math.max(
                            Math.abs(now),
                            Arrays.stream(given).map(Math::abs).max().orElse(0)));
            if (now != Double.NEGATIVE_INFINITY && !(Math.abs(mean - now) <= CONSISTENCY * size)) {
                throw new IllegalArgumentException(
                        "values after the reports average " + mean + " but the alternative's value now is " + now);
            }
        }

        private int bestOther(double[] base) {
            int best = -1;
            for (int a = 0; a < base.length; a++) {
                if (a != alternative && base[a] != Double.NEGATIVE_INFINITY && (best < 0 || base[a] > base[best])) {
                    best = a;
                }
            }
            return best;
        }

        private static int mostOften(int[] count) {
            int most = 0;
            for (int a = 1; a < count.length; a++) {
                most = count[a] > count[most] ? a : most;
            }
            return most;
        }
    }
}
