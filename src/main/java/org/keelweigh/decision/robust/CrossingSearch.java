package org.keelweigh.decision.robust;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.keelweigh.decision.robust.BreakEven.AlwaysAbove;
import org.keelweigh.decision.robust.BreakEven.AlwaysBelow;
import org.keelweigh.decision.robust.BreakEven.Found;

/** Brent's root finder behind a check that there is one root or none. */
final class CrossingSearch {

    /** Points at which monotonicity is checked; cheap beside what a wrong answer costs. */
    private static final int SAMPLES = 33;

    /** Share of the function's span by which it may step back: rounding of the caller's sums. */
    private static final double STEP_BACK_SHARE = 1e-9;

    /** The root is found to this share of the interval's length: a cent in a million. */
    private static final double ACCURACY_SHARE = 1e-10;

    /** Far more evaluations than bisection alone would need. */
    private static final int MOST_EVALUATIONS = 1000;

    private CrossingSearch() {}

    static BreakEven find(DoubleUnaryOperator function, double lo, double hi) {
        if (!(lo < hi) || !Double.isFinite(hi - lo)) {
            throw new IllegalArgumentException("The interval must run from low to high, but is " + lo + " to " + hi);
        }
        double[] samples = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            samples[i] = function.applyAsDouble(position(lo, hi, i));
        }
        requireMonotone(samples, lo, hi);
        double first = samples[0];
        double last = samples[SAMPLES - 1];
        if (first == 0) {
            return new Found(lo);
        }
        if (last == 0) {
            return new Found(hi);
        }
        if (Math.signum(first) == Math.signum(last)) {
            return first > 0 ? new AlwaysAbove() : new AlwaysBelow();
        }
        double accuracy = (hi - lo) * ACCURACY_SHARE;
        return new Found(new BrentSolver(accuracy).solve(MOST_EVALUATIONS, function::applyAsDouble, lo, hi));
    }

    private static double position(double lo, double hi, int i) {
        return i == SAMPLES - 1 ? hi : lo + (hi - lo) * i / (SAMPLES - 1);
    }

    private static void requireMonotone(double[] samples, double lo, double hi) {
        double span = samples[SAMPLES - 1] - samples[0];
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double sample : samples) {
            low = Math.min(low, sample);
            high = Math.max(high, sample);
        }
        // NaN and infinite samples make the span of the samples not finite
        double allowed = (high - low) * STEP_BACK_SHARE;
        for (int i = 1; i < SAMPLES; i++) {
            double step = (samples[i] - samples[i - 1]) * (span < 0 ? -1 : 1);
            if (!(step >= -allowed) || !Double.isFinite(allowed)) {
                throw new IllegalArgumentException("The function must be finite and monotone, but goes from "
                        + samples[i - 1] + " to " + samples[i] + " between " + position(lo, hi, i - 1) + " and "
                        + position(lo, hi, i));
            }
        }
    }
}
