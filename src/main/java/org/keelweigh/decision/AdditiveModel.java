package org.keelweigh.decision;

/**
 * The additive value model {@code V_a = Σ_c w_c v_ac} (Keeney and Raiffa 1976).
 *
 * <p>Adding up is right only if how much a step in one criterion is worth does not depend on the level of the others
 * (mutual preference independence).
 */
public final class AdditiveModel {

    private AdditiveModel() {}

    /**
     * Returns the total value of each alternative.
     *
     * @param values {@code [alternative][criterion]}
     * @param weights one per criterion, summing to one
     */
    public static double[] totals(double[][] values, double[] weights) {
        Tables.requireWeights(weights, Tables.requireTable(values));
        double[] totals = new double[values.length];
        totals(values, weights, totals);
        return totals;
    }

    /**
     * Writes the total value of each alternative into an array of the caller, without checks: for loops that have
     * checked their table once.
     *
     * @param totals as long as {@code values}
     */
    public static void totals(double[][] values, double[] weights, double[] totals) {
        for (int a = 0; a < values.length; a++) {
            totals[a] = total(values[a], weights);
        }
    }

    /** Returns {@code Σ_c w_c v_c} of one alternative, without checks. */
    public static double total(double[] values, double[] weights) {
        double total = 0;
        for (int c = 0; c < weights.length; c++) {
            total += weights[c] * values[c];
        }
        return total;
    }

    /**
     * Values and ranks the alternatives.
     *
     * @param ruledOut alternatives that come last whatever their value
     * @throws IllegalArgumentException if table, weights and flags do not fit together
     */
    public static Ranking rank(double[][] values, double[] weights, boolean[] ruledOut) {
        double[] totals = totals(values, weights);
        double[][] contributions = new double[values.length][weights.length];
        for (int a = 0; a < values.length; a++) {
            for (int c = 0; c < weights.length; c++) {
                contributions[a][c] = weights[c] * values[a][c];
            }
        }
        return new Ranking(totals, contributions, ruledOut.clone(), Ranks.competition(totals, ruledOut));
    }
}
