package org.keelweigh.decision.acceptability;

import org.apache.commons.math3.special.Erf;
import org.apache.commons.math3.special.Gamma;

/**
 * Logarithm of the gamma quantile (scale 1) as a function of the standard normal score of its probability, by cubic
 * Hermite interpolation between exact knots.
 *
 * <p>As a function of the score the logarithm is nearly straight, so knots 1/4 apart give it within 1e-4 (measured in the
 * tests), and it moves smoothly with the shape: that is what makes Dirichlet weights follow a slider.
 */
final class GammaQuantile {

    private static final double REACH = 7;
    private static final double STEP = 0.25;
    private static final int KNOTS = (int) (2 * REACH / STEP) + 1;

    private final double[] log = new double[KNOTS];
    private final double[] slope = new double[KNOTS];

    GammaQuantile(double shape) {
        double guess = Math.log(shape);
        for (int k = KNOTS / 2; k < KNOTS; k++) {
            guess = place(k, shape, guess);
        }
        guess = log[KNOTS / 2];
        for (int k = KNOTS / 2 - 1; k >= 0; k--) {
            guess = place(k, shape, guess - STEP * slope[k + 1]);
        }
    }

    /** Logarithm of the quantile at probability Φ(score). */
    double logAt(double score) {
        double place = (Math.clamp(score, -REACH, REACH) + REACH) / STEP;
        int k = Math.min((int) place, KNOTS - 2);
        double t = place - k;
        double u = 1 - t;
        return u * u * ((1 + 2 * t) * log[k] + t * STEP * slope[k])
                + t * t * ((1 + 2 * u) * log[k + 1] - u * STEP * slope[k + 1]);
    }

    private double place(int k, double shape, double guess) {
        double score = k * STEP - REACH;
        double y = solve(shape, score, guess);
        log[k] = y;
        double normal = -0.5 * score * score - 0.5 * Math.log(2 * Math.PI);
        slope[k] = Math.exp(normal - logDensity(shape, y));
        return y;
    }

    /** Logarithm of the density of the logarithm of a gamma variable. */
    private static double logDensity(double shape, double y) {
        return shape * y - Math.exp(y) - Gamma.logGamma(shape);
    }

    /** Newton's method on the logarithm of the smaller tail, which is close to straight in {@code y}. */
    private static double solve(double shape, double score, double guess) {
        double target = 0.5 * Erf.erfc(Math.abs(score) / Math.sqrt(2));
        double y = guess;
        double step = 1;
        for (int i = 0; i < 60 && Math.abs(step) > 1e-12; i++) {
            double tail = score < 0 ? lowerTail(shape, y) : Gamma.regularizedGammaQ(shape, Math.exp(y));
            double away = Math.log(tail / target) * tail / Math.exp(logDensity(shape, y));
            step = Math.clamp(score < 0 ? -away : away, -2, 2);
            y += step;
        }
        return y;
    }

    private static double lowerTail(double shape, double y) {
        double x = Math.exp(y);
        return x < 1e-10 ? Math.exp(shape * y - Gamma.logGamma(shape + 1)) : Gamma.regularizedGammaP(shape, x);
    }
}
