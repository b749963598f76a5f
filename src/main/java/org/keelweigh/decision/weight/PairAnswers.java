package org.keelweigh.decision.weight;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Judgements in pairs of which some are not made, so that a person has to answer only as many questions as are needed.
 *
 * <p>The priorities are those whose logarithms come nearest to the answers by least squares,
 * {@code min Σ (ln t_ij − x_i + x_j)²}; they are unique exactly when the answers link all criteria (S. Bozóki, J. Fülöp and
 * L. Rónyai, <i>Mathematical and Computer Modelling</i> 52(1–2), 2010; from memory). With every pair answered they are the
 * geometric means of the rows. {@code n − 1} answers that link all criteria decide the priorities and cannot contradict.
 */
public final class PairAnswers {

    private static final int FEWEST = 2;

    private final int size;
    private final List<Answer> answers;

    /**
     * One judgement.
     *
     * @param first a criterion, counted from 0
     * @param second another one
     * @param times how many times as important the first is, above 0
     */
    public record Answer(int first, int second, double times) {

        /** Refuses a criterion against itself and a ratio that is not above 0 and finite. */
        public Answer {
            if (first < 0 || second < 0 || first == second) {
                throw new IllegalArgumentException(
                        "A judgement needs 2 criteria from 0 on, not " + first + " and " + second);
            }
            if (!(times > 0 && times < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("A judgement must be above 0 and finite, but is " + times);
            }
        }

        boolean about(int one, int other) {
            return first == one && second == other || first == other && second == one;
        }
    }

    /**
     * Two criteria to compare.
     *
     * @param first a criterion, counted from 0
     * @param second another one
     */
    public record Pair(int first, int second) {}

    private PairAnswers(int size, List<Answer> answers) {
        this.size = size;
        this.answers = List.copyOf(answers);
    }

    /**
     * Begins with no answer.
     *
     * @param criteria how many criteria there are, at least 2
     */
    public static PairAnswers none(int criteria) {
        if (criteria < FEWEST) {
            throw new IllegalArgumentException("At least 2 criteria are needed to compare, but there are " + criteria);
        }
        return new PairAnswers(criteria, List.of());
    }

    /** Tells the same with one more answer; it takes the place of an earlier one about the same pair. */
    public PairAnswers with(Answer answer) {
        if (answer.first() >= size || answer.second() >= size) {
            throw new IllegalArgumentException("The criteria run from 0 to " + (size - 1) + ", not to "
                    + Math.max(answer.first(), answer.second()));
        }
        List<Answer> more = new ArrayList<>(without(answer.first(), answer.second()).answers);
        more.add(answer);
        return new PairAnswers(size, more);
    }

    /** Tells the same without the answer about a pair. */
    public PairAnswers without(int one, int other) {
        return new PairAnswers(
                size, answers.stream().filter(each -> !each.about(one, other)).toList());
    }

    /** Lists the answers in the order in which they were given. */
    public List<Answer> answers() {
        return answers;
    }

    /** Tells whether the answers link all criteria, so that they decide the priorities. */
    public boolean linked() {
        return Arrays.stream(steps(0)).allMatch(each -> each >= 0);
    }

    /**
     * Computes the priorities, summing to one.
     *
     * @throws IllegalStateException while the answers do not link all criteria
     */
    public double[] priorities() {
        if (!linked()) {
            throw new IllegalStateException("The answers do not link all criteria yet");
        }
        RealMatrix normal = MatrixUtils.createRealMatrix(size - 1, size - 1);
        double[] right = new double[size - 1];
        for (Answer each : answers) {
            add(normal, right, each.first() - 1, each.second() - 1, Math.log(each.times()));
            add(normal, right, each.second() - 1, each.first() - 1, -Math.log(each.times()));
        }
        double[] logs = new LUDecomposition(normal)
                .getSolver()
                .solve(MatrixUtils.createRealVector(right))
                .toArray();
        double[] priorities = new double[size];
        priorities[0] = 1;
        for (int i = 1; i < size; i++) {
            priorities[i] = Math.exp(logs[i - 1]);
        }
        double sum = Arrays.stream(priorities).sum();
        return Arrays.stream(priorities).map(each -> each / sum).toArray();
    }

    /** The logarithm of criterion 0 is held at nought, so it has no row and no column. */
    private static void add(RealMatrix normal, double[] right, int row, int column, double log) {
        if (row >= 0) {
            normal.addToEntry(row, row, 1);
            right[row] += log;
            if (column >= 0) {
                normal.addToEntry(row, column, -1);
            }
        }
    }

    /**
     * Fills the pairs nobody answered with what the priorities imply. What was not asked agrees with itself, so the
     * consistency ratio of the full matrix is the least that it could be.
     *
     * @throws IllegalStateException while the answers do not link all criteria
     */
    public PairwiseComparison completed() {
        double[] priorities = priorities();
        double[][] upper = new double[size - 1][];
        for (int i = 0; i < size - 1; i++) {
            upper[i] = new double[size - 1 - i];
            for (int j = i + 1; j < size; j++) {
                upper[i][j - i - 1] = priorities[i] / priorities[j];
            }
        }
        for (Answer each : answers) {
            int low = Math.min(each.first(), each.second());
            int high = Math.max(each.first(), each.second());
            upper[low][high - low - 1] = each.first() == low ? each.times() : 1 / each.times();
        }
        return PairwiseComparison.ofUpper(upper);
    }

    /**
     * Finds the answer that differs most, as a factor, from what all the other answers say about its pair; empty while no
     * answer can be told from the others. {@code implied} is what the others say.
     */
    public Optional<PairwiseComparison.Contradiction> oddOneOut() {
        PairwiseComparison.Contradiction oddest = null;
        double farthest = -1;
        for (Answer each : answers) {
            PairAnswers others = without(each.first(), each.second());
            if (others.linked()) {
                double[] priorities = others.priorities();
                double implied = priorities[each.first()] / priorities[each.second()];
                double apart = Math.abs(Math.log(each.times() / implied));
                if (apart > farthest) {
                    farthest = apart;
                    oddest = new PairwiseComparison.Contradiction(each.first(), each.second(), each.times(), implied);
                }
            }
        }
        return Optional.ofNullable(oddest);
    }

    /**
     * Finds the pair whose answer would check the most: the one that is linked through the most answers, and the first of
     * those. Empty when every pair is answered, or some are not linked at all.
     */
    public Optional<Pair> mostTelling() {
        Pair best = null;
        int most = 1;
        for (int i = 0; i < size; i++) {
            int[] steps = steps(i);
            for (int j = i + 1; j < size; j++) {
                if (steps[j] > most) {
                    most = steps[j];
                    best = new Pair(i, j);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** Tells through how many answers each criterion is linked with one; −1 where it is not. */
    private int[] steps(int from) {
        int[] steps = new int[size];
        Arrays.fill(steps, -1);
        steps[from] = 0;
        Deque<Integer> open = new ArrayDeque<>(List.of(from));
        while (!open.isEmpty()) {
            int at = open.remove();
            for (Answer each : answers) {
                int next = each.first() == at ? each.second() : each.second() == at ? each.first() : -1;
                if (next >= 0 && steps[next] < 0) {
                    steps[next] = steps[at] + 1;
                    open.add(next);
                }
            }
        }
        return steps;
    }
}
