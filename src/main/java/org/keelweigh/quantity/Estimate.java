package org.keelweigh.quantity;

/**
 * A three-point estimate: the least, the likeliest and the most something could be.
 *
 * <p>Its mean is the PERT mean {@code (low + 4·likely + high) / 6} (D. Malcolm, J. Roseboom, C. Clark, W. Fazar,
 * <i>Operations Research</i> 7(5), 1959). Whether it counts money, minutes or kilograms is for the owner to say.
 *
 * @param low the least; not above {@code likely}
 * @param likely the most likely
 * @param high the most; not below {@code likely}
 */
public record Estimate(double low, double likely, double high) {

    /** Nothing at all, for certain. */
    public static final Estimate ZERO = new Estimate(0, 0, 0);

    public Estimate {
        Finite.require("low value", low, "its unit");
        Finite.require("likely value", likely, "its unit");
        Finite.require("high value", high, "its unit");
        if (low > likely || likely > high) {
            throw new IllegalArgumentException("An estimate runs from low over likely to high, but here it is " + low
                    + ", " + likely + ", " + high);
        }
    }

    /** Makes an estimate that is certain. */
    public static Estimate exactly(double value) {
        return new Estimate(value, value, value);
    }

    /** Tells whether low and high are the same. */
    public boolean certain() {
        return low == high;
    }

    /** Tells the PERT mean. */
    public double mean() {
        return (low + 4 * likely + high) / 6;
    }

    /** Adds point by point. The sum's low and high are bounds, not percentiles. */
    public Estimate plus(Estimate other) {
        return new Estimate(low + other.low, likely + other.likely, high + other.high);
    }

    /**
     * Multiplies each point by {@code factor}.
     *
     * @throws IllegalArgumentException if the factor is negative: low and high would change places
     */
    public Estimate times(double factor) {
        if (factor < 0) {
            throw new IllegalArgumentException("The factor must not be negative, but is " + factor);
        }
        return new Estimate(low * factor, likely * factor, high * factor);
    }
}
