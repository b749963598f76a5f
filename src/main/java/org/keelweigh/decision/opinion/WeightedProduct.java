package org.keelweigh.decision.opinion;

import org.keelweigh.decision.Tables;

/**
 * The weighted product {@code Π_c x_ac^{w_c}}, with negative exponents where less is better (Triantaphyllou and Mann
 * 1989). Only ratios count, so units cancel, but a zero can never be made up for.
 */
public final class WeightedProduct {

    private WeightedProduct() {}

    /**
     * Scores alternatives.
     *
     * @param measures {@code [alternative][criterion]} on ratio scales: above 0, or 0 where more is better, which makes
     *     the score 0 if the criterion has weight
     * @param weights one per criterion, summing to one
     * @param moreIsBetter one flag per criterion
     * @throws IllegalArgumentException naming the measure that is negative, or 0 where less is better
     */
    public static Opinion of(double[][] measures, double[] weights, boolean[] moreIsBetter) {
        int columns = Tables.requireTable(measures);
        Tables.requireWeights(weights, columns);
        Senses.require(moreIsBetter, columns);
        double[] scores = new double[measures.length];
        for (int a = 0; a < measures.length; a++) {
            double logs = 0;
            for (int c = 0; c < columns; c++) {
                double measure = measures[a][c];
                if (measure < 0 || measure == 0 && !moreIsBetter[c]) {
                    throw new IllegalArgumentException("A weighted product needs measures above 0, but alternative " + a
                            + " has " + measure + " in criterion " + c);
                }
                // a weight of 0 leaves the criterion out, even where its measure is 0
                logs += weights[c] == 0 ? 0 : weights[c] * Math.log(measure) * (moreIsBetter[c] ? 1 : -1);
            }
            scores[a] = Math.exp(logs);
        }
        return Opinion.of("Weighted product", scores);
    }
}
