package org.keelweigh.decision.opinion;

import java.util.Arrays;
import java.util.List;
import org.keelweigh.decision.Tables;

/**
 * TOPSIS with vector normalisation (Hwang and Yoon 1981): near to the ideal and far from the anti-ideal alternative.
 *
 * <p>{@code r_ac = x_ac / √Σ_a x_ac²}, times the weight; {@code S⁺} and {@code S⁻} are Euclidean distances to the best
 * and the worst entry of each column; the score is {@code S⁻ / (S⁺ + S⁻)}, 0 to 1. The ideal depends on the alternatives
 * at hand, so adding one can reorder the others.
 *
 * @param toIdeal {@code S⁺} by alternative
 * @param toAntiIdeal {@code S⁻} by alternative
 * @param opinion scores and ranks
 */
public record Topsis(List<Double> toIdeal, List<Double> toAntiIdeal, Opinion opinion) {

    /** The score of all alternatives when they do not differ at all, so that ideal and anti-ideal coincide. */
    private static final double UNDECIDED = 0.5;

    /** Copies the lists. */
    public Topsis {
        toIdeal = List.copyOf(toIdeal);
        toAntiIdeal = List.copyOf(toAntiIdeal);
    }

    /**
     * Scores alternatives; leave out those that are ruled out, because they would shift the ideal.
     *
     * @param measures {@code [alternative][criterion]}, values or natural units
     * @param weights one per criterion, summing to one
     * @param moreIsBetter one flag per criterion
     * @throws IllegalArgumentException if table, weights and flags do not fit together
     */
    public static Topsis of(double[][] measures, double[] weights, boolean[] moreIsBetter) {
        int columns = Tables.requireTable(measures);
        Tables.requireWeights(weights, columns);
        Senses.require(moreIsBetter, columns);
        int rows = measures.length;
        double[] squaresToIdeal = new double[rows];
        double[] squaresToAntiIdeal = new double[rows];
        for (int c = 0; c < columns; c++) {
            double factor = (moreIsBetter[c] ? weights[c] : -weights[c]) / norm(measures, c);
            double best = Double.NEGATIVE_INFINITY;
            double worst = Double.POSITIVE_INFINITY;
            for (double[] row : measures) {
                best = Math.max(best, row[c] * factor);
                worst = Math.min(worst, row[c] * factor);
            }
            for (int a = 0; a < rows; a++) {
                double entry = measures[a][c] * factor;
                squaresToIdeal[a] += (best - entry) * (best - entry);
                squaresToAntiIdeal[a] += (entry - worst) * (entry - worst);
            }
        }
        return result(squaresToIdeal, squaresToAntiIdeal);
    }

    private static double norm(double[][] measures, int c) {
        double squares = 0;
        for (double[] row : measures) {
            squares += row[c] * row[c];
        }
        // a column of zeros stays a column of zeros
        return squares > 0 ? Math.sqrt(squares) : 1;
    }

    private static Topsis result(double[] squaresToIdeal, double[] squaresToAntiIdeal) {
        double[] scores = new double[squaresToIdeal.length];
        for (int a = 0; a < scores.length; a++) {
            double plus = Math.sqrt(squaresToIdeal[a]);
            double minus = Math.sqrt(squaresToAntiIdeal[a]);
            scores[a] = plus + minus > 0 ? minus / (plus + minus) : UNDECIDED;
        }
        return new Topsis(
                Arrays.stream(squaresToIdeal).map(Math::sqrt).boxed().toList(),
                Arrays.stream(squaresToAntiIdeal).map(Math::sqrt).boxed().toList(),
                Opinion.of("TOPSIS, vector normalisation", scores));
    }
}
