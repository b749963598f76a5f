package org.keelweigh.decision.robust;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.keelweigh.decision.Tables;

/**
 * Whether any weights at all put an alternative first, by linear programming: maximise its smallest lead over the others
 * over all {@code w ≥ 0}, {@code Σ w = 1}. A negative result proves "never best", which a sampled share of nought cannot.
 *
 * @param alternative row
 * @param lead the largest lead over the best other that any weights give, in value points; negative if it is never first,
 *     infinite if there is no other to lead over, minus infinity if it is ruled out
 * @param weights the weights that favour it most, one per criterion
 */
public record EverBest(int alternative, double lead, List<Double> weights) {

    /** Leads within this share of the widest spread of values are ties: what the solver's rounding can do. */
    private static final double TIE_SHARE = 1e-9;

    /** Copies the weights. */
    public EverBest {
        weights = List.copyOf(weights);
    }

    /**
     * Finds the weights that favour an alternative most.
     *
     * @param values {@code [alternative][criterion]}
     * @param ruledOut alternatives that need not be beaten; one that is ruled out itself can never be best
     */
    public static EverBest of(double[][] values, boolean[] ruledOut, int alternative) {
        int n = Tables.requireTable(values);
        Tables.requireFlags(ruledOut, values.length);
        Tables.requireIndex(alternative, values.length);
        double scale = WeightProgram.scale(Tables.spreads(values, new boolean[values.length]));
        List<LinearConstraint> constraints = constraints(values, ruledOut, alternative, scale);
        if (ruledOut[alternative] || constraints.size() == 1) {
            double lead = ruledOut[alternative] ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
            double[] equal = new double[n];
            Arrays.fill(equal, 1.0 / n);
            return result(alternative, lead, equal);
        }
        double[] objective = new double[n + 1];
        objective[n] = 1;
        double[] solution = WeightProgram.solve(objective, constraints, GoalType.MAXIMIZE)
                .orElseThrow(() -> new IllegalStateException("Some weights always satisfy the constraints"));
        double lead = (solution[n] - 1) * scale;
        return result(
                alternative,
                Math.abs(lead) <= TIE_SHARE * scale ? 0 : lead,
                WeightProgram.cleaned(Arrays.copyOf(solution, n)));
    }

    /** Variables: the weights, then the scaled lead plus one, which keeps it non-negative. */
    private static List<LinearConstraint> constraints(
            double[][] values, boolean[] ruledOut, int alternative, double scale) {
        int n = values[0].length;
        List<LinearConstraint> constraints = new ArrayList<>();
        double[] sum = new double[n + 1];
        Arrays.fill(sum, 0, n, 1);
        constraints.add(new LinearConstraint(sum, Relationship.EQ, 1));
        for (int other = 0; other < values.length; other++) {
            if (other == alternative || ruledOut[other]) {
                continue;
            }
            double[] row = new double[n + 1];
            for (int c = 0; c < n; c++) {
                row[c] = (values[alternative][c] - values[other][c]) / scale;
            }
            row[n] = -1;
            constraints.add(new LinearConstraint(row, Relationship.GEQ, -1));
        }
        return constraints;
    }

    private static EverBest result(int alternative, double lead, double[] weights) {
        return new EverBest(alternative, lead, Arrays.stream(weights).boxed().toList());
    }

    /** Tells whether some weights put it first, alone or tied. */
    public boolean possible() {
        return lead >= 0;
    }

    /** Tells whether some weights put it first alone. */
    public boolean alone() {
        return lead > 0;
    }
}
