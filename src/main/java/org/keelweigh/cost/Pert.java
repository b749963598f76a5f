package org.keelweigh.cost;

import org.apache.commons.math3.distribution.BetaDistribution;
import org.keelweigh.quantity.Estimate;

/**
 * The distribution behind a three-point estimate: a beta on low..high with {@code α = 1 + 4(m − a)/(b − a)} and
 * {@code β = 1 + 4(b − m)/(b − a)}, so that its mean is the PERT mean {@code (a + 4m + b)/6}.
 *
 * <p>Its variance is {@code (μ − a)(b − μ)/7}. That is not the PERT rule of thumb {@code ((b − a)/6)²}; the two agree
 * only at α = 3 ± √2. Source of the estimate: D. Malcolm, J. Roseboom, C. Clark, W. Fazar, <i>Operations Research</i>
 * 7(5):646–669, 1959; variance of the beta by its textbook formula with α + β = 6.
 *
 * @param estimate low, likely and high, in the owner's unit
 */
public record Pert(Estimate estimate) {

    private static final double SHAPE = 4;

    /** Makes the distribution of an estimate given point by point. */
    public static Pert of(double low, double likely, double high) {
        return new Pert(new Estimate(low, likely, high));
    }

    /** Tells the first shape parameter, 1..5; 3 for a certain estimate. */
    public double alpha() {
        return 1 + SHAPE * mode();
    }

    /** Tells the second shape parameter, 1..5; 3 for a certain estimate. */
    public double beta() {
        return 1 + SHAPE * (1 - mode());
    }

    /** Tells the mean, {@code (a + 4m + b)/6}. */
    public double mean() {
        return estimate.mean();
    }

    /** Tells the variance of the beta, {@code (μ − a)(b − μ)/7}, in the unit squared. */
    public double variance() {
        return (mean() - estimate.low()) * (estimate.high() - mean()) / (SHAPE + 3);
    }

    /** Tells the variance by the PERT rule of thumb, {@code ((b − a)/6)²}: for comparison with hand calculations. */
    public double ruleOfThumbVariance() {
        double sixth = (estimate.high() - estimate.low()) / 6;
        return sixth * sixth;
    }

    /**
     * Tells the value that is not passed with chance {@code p}, by inverting the incomplete beta function. It takes
     * many microseconds: sampling uses {@link #table()}.
     *
     * @param p 0..1
     */
    public double quantile(double p) {
        requireChance(p);
        if (estimate.certain()) {
            return estimate.low();
        }
        double share = new BetaDistribution(null, alpha(), beta()).inverseCumulativeProbability(p);
        return estimate.low() + share * (estimate.high() - estimate.low());
    }

    /** Makes a table for fast quantiles of this distribution. */
    public PertTable table() {
        return PertTable.of(this);
    }

    static void requireChance(double p) {
        if (!(p >= 0 && p <= 1)) {
            throw new IllegalArgumentException("A chance must be between 0 and 1, not " + p);
        }
    }

    private double mode() {
        return estimate.certain() ? 0.5 : (estimate.likely() - estimate.low()) / (estimate.high() - estimate.low());
    }
}
