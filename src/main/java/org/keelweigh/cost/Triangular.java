package org.keelweigh.cost;

import org.keelweigh.quantity.Estimate;

/**
 * The triangular distribution over a three-point estimate: a blunter reading of the same three numbers than
 * {@link Pert}, whose mean {@code (a + b + c)/3} leans further to a far end. It shows how much the choice matters.
 *
 * <p>Source: S. Kotz, J. van Dorp, <i>Beyond Beta</i>, World Scientific 2004 (from memory).
 *
 * @param estimate low, likely and high, in the owner's unit
 */
public record Triangular(Estimate estimate) {

    /** Tells the mean, {@code (a + b + c)/3}. */
    public double mean() {
        return (estimate.low() + estimate.likely() + estimate.high()) / 3;
    }

    /** Tells the variance, {@code (a² + b² + c² − ab − ac − bc)/18}, in the unit squared. */
    public double variance() {
        double left = estimate.likely() - estimate.low();
        double right = estimate.high() - estimate.likely();
        return (left * left + left * right + right * right) / 18;
    }

    /**
     * Tells the chance of at most {@code x}.
     *
     * @param x any number, in the owner's unit
     */
    public double cumulative(double x) {
        if (x >= estimate.high()) {
            return 1;
        }
        if (x < estimate.low()) {
            return 0;
        }
        double range = estimate.high() - estimate.low();
        double fromLow = x - estimate.low();
        double toHigh = estimate.high() - x;
        return x < estimate.likely()
                ? fromLow * fromLow / (range * (estimate.likely() - estimate.low()))
                : 1 - toHigh * toHigh / (range * (estimate.high() - estimate.likely()));
    }

    /**
     * Tells the value that is not passed with chance {@code p}.
     *
     * @param p 0..1
     */
    public double quantile(double p) {
        Pert.requireChance(p);
        double range = estimate.high() - estimate.low();
        double left = estimate.likely() - estimate.low();
        return p * range <= left
                ? estimate.low() + Math.sqrt(p * range * left)
                : estimate.high() - Math.sqrt((1 - p) * range * (estimate.high() - estimate.likely()));
    }
}
