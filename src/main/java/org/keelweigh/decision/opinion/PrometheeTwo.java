package org.keelweigh.decision.opinion;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.keelweigh.decision.Tables;

/**
 * PROMETHEE II (Brans and Vincke 1985): alternatives are compared in pairs, and what counts is how much each is preferred
 * to the others on balance.
 *
 * <p>{@code π(a,b) = Σ_c w_c P_c(lead of a over b)}; {@code φ⁺(a)} is the mean of {@code π(a,·)} over the others,
 * {@code φ⁻(a)} the mean of {@code π(·,a)}, and the score is {@code φ⁺ − φ⁻}, −1 to 1. Adding an alternative can reorder
 * the others.
 *
 * @param preferences {@code π(a,b)}, rows a
 * @param positiveFlows {@code φ⁺} by alternative
 * @param negativeFlows {@code φ⁻} by alternative
 * @param opinion net flows and ranks
 */
public record PrometheeTwo(
        List<List<Double>> preferences, List<Double> positiveFlows, List<Double> negativeFlows, Opinion opinion) {

    /** Copies the lists. */
    public PrometheeTwo {
        preferences = preferences.stream().map(List::copyOf).toList();
        positiveFlows = List.copyOf(positiveFlows);
        negativeFlows = List.copyOf(negativeFlows);
    }

    /**
     * Scores alternatives; leave out those that are ruled out.
     *
     * @param measures {@code [alternative][criterion]}, values or natural units
     * @param weights one per criterion, summing to one
     * @param moreIsBetter one flag per criterion
     * @param functions one per criterion, thresholds in the units of its measures
     * @throws IllegalArgumentException if the parts do not fit together
     */
    public static PrometheeTwo of(
            double[][] measures, double[] weights, boolean[] moreIsBetter, List<PreferenceFunction> functions) {
        int columns = Tables.requireTable(measures);
        Tables.requireWeights(weights, columns);
        Senses.require(moreIsBetter, columns);
        if (functions.size() != columns) {
            throw new IllegalArgumentException(
                    "There are " + functions.size() + " preference functions for " + columns + " criteria");
        }
        int n = measures.length;
        double[][] preferences = new double[n][n];
        double[] plus = new double[n];
        double[] minus = new double[n];
        double[] net = new double[n];
        for (int a = 0; a < n; a++) {
            for (int b = 0; b < n; b++) {
                for (int c = 0; c < columns && a != b; c++) {
                    double lead = (measures[a][c] - measures[b][c]) * (moreIsBetter[c] ? 1 : -1);
                    preferences[a][b] += weights[c] * functions.get(c).degree(lead);
                }
                plus[a] += preferences[a][b] / Math.max(1, n - 1);
                minus[b] += preferences[a][b] / Math.max(1, n - 1);
            }
        }
        for (int a = 0; a < n; a++) {
            net[a] = plus[a] - minus[a];
        }
        return new PrometheeTwo(
                Arrays.stream(preferences).map(PrometheeTwo::list).toList(),
                list(plus),
                list(minus),
                Opinion.of("PROMETHEE II", net));
    }

    private static List<Double> list(double[] numbers) {
        return IntStream.range(0, numbers.length).mapToObj(i -> numbers[i]).toList();
    }
}
