package org.keelweigh.decision.robust;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NoFeasibleSolutionException;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;

/** A small linear program over non-negative variables: the one place that knows the solver. */
final class WeightProgram {

    /** Reduced costs and residuals below this are rounding; coefficients are scaled to at most one. */
    private static final double EPSILON = 1e-10;

    private static final int COMPARE_ULPS = 10;
    private static final double CUT_OFF = 1e-12;
    private static final int MOST_PIVOTS = 10_000;

    private WeightProgram() {}

    /**
     * Returns the optimal variables, or nothing if no variables satisfy the constraints.
     *
     * <p>Variables with the same column are solved as one and the first of them gets its value: the solver of Commons
     * Math 3.6.1 takes every copy of a basic column for basic and then reads the wrong one.
     *
     * @throws IllegalStateException if the solver gives up, which a program of this size never should
     */
    static Optional<double[]> solve(double[] objective, List<LinearConstraint> constraints, GoalType goal) {
        int[] distinct = distinctColumns(objective, constraints);
        List<LinearConstraint> reduced = constraints.stream()
                .map(row -> new LinearConstraint(
                        pick(row.getCoefficients().toArray(), distinct), row.getRelationship(), row.getValue()))
                .toList();
        return solveDistinct(pick(objective, distinct), reduced, goal).map(solution -> {
            double[] variables = new double[objective.length];
            for (int k = 0; k < distinct.length; k++) {
                variables[distinct[k]] = solution[k];
            }
            return variables;
        });
    }

    private static Optional<double[]> solveDistinct(
            double[] objective, List<LinearConstraint> constraints, GoalType goal) {
        try {
            double[] solution = new SimplexSolver(EPSILON, COMPARE_ULPS, CUT_OFF)
                    .optimize(
                            new MaxIter(MOST_PIVOTS),
                            new LinearObjectiveFunction(objective, 0),
                            new LinearConstraintSet(constraints),
                            new NonNegativeConstraint(true),
                            goal)
                    .getPoint();
            return Optional.of(solution);
        } catch (NoFeasibleSolutionException nothing) {
            return Optional.empty();
        } catch (TooManyIterationsException stuck) {
            throw new IllegalStateException("The linear program did not end after " + MOST_PIVOTS + " pivots", stuck);
        }
    }

    private static int[] distinctColumns(double[] objective, List<LinearConstraint> constraints) {
        return IntStream.range(0, objective.length)
                .filter(j -> IntStream.range(0, j).noneMatch(i -> same(objective, constraints, i, j)))
                .toArray();
    }

    private static boolean same(double[] objective, List<LinearConstraint> constraints, int i, int j) {
        return objective[i] == objective[j]
                && constraints.stream().allMatch(row -> {
                    RealVector coefficients = row.getCoefficients();
                    return Math.abs(coefficients.getEntry(i) - coefficients.getEntry(j)) <= CUT_OFF;
                });
    }

    private static double[] pick(double[] numbers, int[] indexes) {
        return Arrays.stream(indexes).mapToDouble(i -> numbers[i]).toArray();
    }

    /** Clears rounding from weights: nothing below zero, summing to one. */
    static double[] cleaned(double[] weights) {
        double sum = 0;
        for (int c = 0; c < weights.length; c++) {
            weights[c] = Math.max(0, weights[c]);
            sum += weights[c];
        }
        for (int c = 0; c < weights.length; c++) {
            weights[c] /= sum;
        }
        return weights;
    }

    /** Returns the widest spread, by which differences are scaled to at most one; 1 if nothing differs. */
    static double scale(double[] spreads) {
        double scale = 0;
        for (double spread : spreads) {
            scale = Math.max(scale, spread);
        }
        return scale > 0 ? scale : 1;
    }
}
