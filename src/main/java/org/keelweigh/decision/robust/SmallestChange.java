package org.keelweigh.decision.robust;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.keelweigh.decision.Tables;

/**
 * The smallest change of the weights that lets a rival catch up, by linear programming: minimise
 * {@code Σ_c |w'_c − w_c|} so that the rival's total reaches the others', {@code w' ≥ 0} and {@code Σ w' = 1}.
 *
 * @param rival alternative that catches up
 * @param weights w', one per criterion, summing to one
 * @param changes {@code w' − w}, one per criterion
 */
public record SmallestChange(int rival, List<Double> weights, List<Double> changes) {

    /** Copies the lists. */
    public SmallestChange {
        weights = List.copyOf(weights);
        changes = List.copyOf(changes);
    }

    /** Returns {@code Σ |w' − w|}, 0 to 2. */
    public double total() {
        return changes.stream().mapToDouble(Math::abs).sum();
    }

    /** Returns the share of all weight that moves from some criteria to others, 0 to 1: half the total. */
    public double moved() {
        return total() / 2;
    }

    /** Returns the largest change of a single weight, 0 to 1. */
    public double largest() {
        return changes.stream().mapToDouble(Math::abs).max().orElse(0);
    }

    /**
     * Returns the smallest change that lets the rival at least tie one given opponent, whatever becomes of the others;
     * empty if no weights do.
     */
    public static Optional<SmallestChange> toTie(double[][] values, double[] weights, int opponent, int rival) {
        Tables.requireIndex(opponent, values.length);
        return solve(values, weights, new int[] {opponent}, rival);
    }

    /**
     * Returns the smallest change that puts the rival first, alone or tied, among all that are not ruled out; empty if no
     * weights do or the rival is ruled out itself.
     */
    public static Optional<SmallestChange> toWin(double[][] values, double[] weights, boolean[] ruledOut, int rival) {
        Tables.requireFlags(ruledOut, values.length);
        Tables.requireIndex(rival, values.length);
        int[] opponents = IntStream.range(0, values.length)
                .filter(a -> a != rival && !ruledOut[a])
                .toArray();
        return ruledOut[rival] ? Optional.empty() : solve(values, weights, opponents, rival);
    }

    private static Optional<SmallestChange> solve(double[][] values, double[] weights, int[] opponents, int rival) {
        int n = Tables.requireTable(values);
        Tables.requireWeights(weights, n);
        Tables.requireIndex(rival, values.length);
        // variables: what is added to each weight, then what is taken away from each
        double[] objective = new double[2 * n];
        Arrays.fill(objective, 1);
        return WeightProgram.solve(objective, constraints(values, weights, opponents, rival), GoalType.MINIMIZE)
                .map(solution -> result(weights, rival, solution));
    }

    private static List<LinearConstraint> constraints(double[][] values, double[] weights, int[] opponents, int rival) {
        int n = weights.length;
        double scale = WeightProgram.scale(Tables.spreads(values, new boolean[values.length]));
        List<LinearConstraint> constraints = new ArrayList<>();
        double[] balance = new double[2 * n];
        for (int c = 0; c < n; c++) {
            balance[c] = 1;
            balance[n + c] = -1;
            double[] taken = new double[2 * n];
            taken[n + c] = 1;
            constraints.add(new LinearConstraint(taken, Relationship.LEQ, weights[c]));
        }
        constraints.add(new LinearConstraint(balance, Relationship.EQ, 0));
        for (int opponent : opponents) {
            double[] lead = new double[2 * n];
            double now = 0;
            for (int c = 0; c < n; c++) {
                double difference = (values[rival][c] - values[opponent][c]) / scale;
                lead[c] = difference;
                lead[n + c] = -difference;
                now += weights[c] * difference;
            }
            constraints.add(new LinearConstraint(lead, Relationship.GEQ, -now));
        }
        return constraints;
    }

    private static SmallestChange result(double[] weights, int rival, double[] solution) {
        int n = weights.length;
        double[] changed = new double[n];
        for (int c = 0; c < n; c++) {
            changed[c] = weights[c] + solution[c] - solution[n + c];
        }
        WeightProgram.cleaned(changed);
        List<Double> changes =
                IntStream.range(0, n).mapToObj(c -> changed[c] - weights[c]).toList();
        return new SmallestChange(rival, Arrays.stream(changed).boxed().toList(), changes);
    }
}
