package org.keelweigh.decision.weight;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.keelweigh.decision.Tables;
import org.keelweigh.decision.Weights;

/**
 * Weights from judgements in pairs, "a matters three times as much as b" (Saaty 1977).
 *
 * <p>The matrix is reciprocal, {@code a_ij = 1 / a_ji}. Priorities are the eigenvector of its largest eigenvalue
 * {@code λ_max}, or the normalised geometric means of its rows; the two agree for up to three criteria and for
 * consistent judgements. {@code CI = (λ_max − n) / (n − 1)}, {@code CR = CI / RI}; above 0.10 ask again.
 */
public final class PairwiseComparison {

    /** Allows 0.333 as the counterpart of 3. */
    private static final double RECIPROCAL_TOLERANCE = 2e-3;

    /** Change between steps of the power iteration at which the digits of a double are used up. */
    private static final double CONVERGED = 1e-15;

    /** Far more steps than a positive matrix of this size needs; stops rounding from cycling in the last digit. */
    private static final int MOST_STEPS = 10_000;

    private final double[][] matrix;
    private final double[] priorities;
    private final double lambdaMax;

    /**
     * How well the judgements agree with each other.
     *
     * @param lambdaMax largest eigenvalue, at least n
     * @param index {@code CI}
     * @param ratio {@code CR}; 0 for one or two criteria, which cannot contradict
     * @param table name of the random index
     */
    public record Consistency(double lambdaMax, double index, double ratio, String table) {}

    /**
     * The judgement that fits the rest worst.
     *
     * @param first criterion
     * @param second criterion
     * @param stated how many times as important the first was said to be
     * @param implied what the priorities say instead
     */
    public record Contradiction(int first, int second, double stated, double implied) {}

    private PairwiseComparison(double[][] matrix) {
        this.matrix = matrix;
        this.priorities = principalVector(matrix);
        this.lambdaMax = eigenvalue(matrix, priorities);
    }

    /**
     * Takes a full matrix; the part below the diagonal is only checked.
     *
     * @throws IllegalArgumentException unless the matrix is square, positive and reciprocal
     */
    public static PairwiseComparison of(double[][] matrix) {
        int n = Tables.requireTable(matrix);
        if (n != matrix.length) {
            throw new IllegalArgumentException(
                    "A comparison matrix must be square, but is " + matrix.length + " by " + n);
        }
        double[][] upper = new double[n - 1][];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                if (!(Math.abs(matrix[i][j] * matrix[j][i] - 1) <= RECIPROCAL_TOLERANCE)) {
                    throw new IllegalArgumentException("Judgements " + i + ", " + j + " and " + j + ", " + i
                            + " must be reciprocal, but are " + matrix[i][j] + " and " + matrix[j][i]);
                }
            }
            if (i < n - 1) {
                upper[i] = Arrays.copyOfRange(matrix[i], i + 1, n);
            }
        }
        return ofUpper(upper);
    }

    /**
     * Takes the judgements above the diagonal: row i holds those of criterion i against i+1, i+2 …
     *
     * @throws IllegalArgumentException if the rows are not n−1, n−2 … 1 long or a judgement is not positive
     */
    public static PairwiseComparison ofUpper(double[][] upper) {
        int n = upper.length + 1;
        double[][] matrix = new double[n][n];
        for (int i = 0; i < n; i++) {
            matrix[i][i] = 1;
            for (int j = i + 1; j < n; j++) {
                if (upper[i].length != n - 1 - i) {
                    throw new IllegalArgumentException(
                            "Row " + i + " must hold " + (n - 1 - i) + " judgements, but holds " + upper[i].length);
                }
                double judgement = upper[i][j - i - 1];
                if (!(judgement > 0 && judgement < Double.POSITIVE_INFINITY)) {
                    throw new IllegalArgumentException(
                            "Judgement " + i + ", " + j + " must be above 0 and finite, but is " + judgement);
                }
                matrix[i][j] = judgement;
                matrix[j][i] = 1 / judgement;
            }
        }
        return new PairwiseComparison(matrix);
    }

    /**
     * Merges several people's judgements by their geometric mean, the only mean that stays reciprocal (Aczél and Saaty
     * 1983).
     *
     * @throws IllegalArgumentException if there is none or they differ in size
     */
    public static PairwiseComparison together(List<PairwiseComparison> people) {
        if (people.isEmpty()) {
            throw new IllegalArgumentException("At least 1 person's judgements are needed");
        }
        int n = people.getFirst().size();
        double[][] upper = new double[n - 1][];
        for (int i = 0; i < n - 1; i++) {
            upper[i] = new double[n - 1 - i];
            for (int j = i + 1; j < n; j++) {
                double logs = 0;
                for (PairwiseComparison person : people) {
                    if (person.size() != n) {
                        throw new IllegalArgumentException(
                                "Everyone must compare " + n + " criteria, but one compared " + person.size());
                    }
                    logs += Math.log(person.matrix[i][j]);
                }
                upper[i][j - i - 1] = Math.exp(logs / people.size());
            }
        }
        return ofUpper(upper);
    }

    private static double[] principalVector(double[][] matrix) {
        double[] vector = geometricMeans(matrix);
        double change = 1;
        for (int step = 0; step < MOST_STEPS && change > CONVERGED; step++) {
            double[] next = normalised(times(matrix, vector));
            change = 0;
            for (int i = 0; i < next.length; i++) {
                change = Math.max(change, Math.abs(next[i] - vector[i]));
            }
            vector = next;
        }
        return vector;
    }

    private static double eigenvalue(double[][] matrix, double[] vector) {
        double[] image = times(matrix, vector);
        double sum = 0;
        for (int i = 0; i < vector.length; i++) {
            sum += image[i] / vector[i];
        }
        return sum / vector.length;
    }

    private static double[] geometricMeans(double[][] matrix) {
        double[] means = new double[matrix.length];
        for (int i = 0; i < matrix.length; i++) {
            double logs = 0;
            for (double judgement : matrix[i]) {
                logs += Math.log(judgement);
            }
            means[i] = Math.exp(logs / matrix.length);
        }
        return normalised(means);
    }

    private static double[] times(double[][] matrix, double[] vector) {
        double[] image = new double[vector.length];
        for (int i = 0; i < vector.length; i++) {
            for (int j = 0; j < vector.length; j++) {
                image[i] += matrix[i][j] * vector[j];
            }
        }
        return image;
    }

    private static double[] normalised(double[] vector) {
        double sum = 0;
        for (double entry : vector) {
            sum += entry;
        }
        for (int i = 0; i < vector.length; i++) {
            vector[i] /= sum;
        }
        return vector;
    }

    /** Returns the number of criteria compared. */
    public int size() {
        return matrix.length;
    }

    /** Returns the eigenvector priorities, summing to one. */
    public double[] priorities() {
        return priorities.clone();
    }

    /** Returns the normalised geometric means of the rows (Crawford and Williams 1985), summing to one. */
    public double[] geometricMeans() {
        return geometricMeans(matrix);
    }

    /** Returns the eigenvector priorities as weights of the criteria in the order in which they were compared. */
    public Weights weights(List<String> criteria) {
        if (criteria.size() != size()) {
            throw new IllegalArgumentException("There are " + criteria.size() + " names for " + size() + " criteria");
        }
        Map<String, Double> raw = new LinkedHashMap<>();
        for (int i = 0; i < size(); i++) {
            raw.put(criteria.get(i), priorities[i]);
        }
        return Weights.of(raw);
    }

    /**
     * Returns how consistent the judgements are.
     *
     * @throws IllegalArgumentException if the table does not reach this number of criteria
     */
    public Consistency consistency(RandomIndex table) {
        int n = size();
        double index = n > 2 ? (lambdaMax - n) / (n - 1) : 0;
        double ratio = n > 2 ? index / table.of(n) : 0;
        return new Consistency(lambdaMax, index, ratio, table.name());
    }

    /**
     * Returns the judgement to ask about first: the one whose stated ratio is farthest, as a factor, from what the
     * priorities imply.
     *
     * @throws IllegalArgumentException with fewer than two criteria
     */
    public Contradiction worstJudgement() {
        if (size() < 2) {
            throw new IllegalArgumentException("At least 2 criteria are needed to compare, but there is " + size());
        }
        Contradiction worst = contradiction(0, 1);
        for (int i = 0; i < size(); i++) {
            for (int j = i + 1; j < size(); j++) {
                Contradiction candidate = contradiction(i, j);
                worst = factor(candidate) > factor(worst) ? candidate : worst;
            }
        }
        return worst;
    }

    private Contradiction contradiction(int i, int j) {
        return new Contradiction(i, j, matrix[i][j], priorities[i] / priorities[j]);
    }

    private static double factor(Contradiction judgement) {
        return Math.abs(Math.log(judgement.stated() / judgement.implied()));
    }
}
