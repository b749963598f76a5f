package org.keelweigh.quantity;

/**
 * A length or distance.
 *
 * @param m metres; any finite number
 */
public record Length(double m) implements Comparable<Length> {

    /** Metres in one international foot, exact (international yard and pound agreement, 1959). */
    public static final double M_PER_FOOT = 0.3048;

    /** Metres in one international inch, exact (international yard and pound agreement, 1959). */
    public static final double M_PER_INCH = 0.0254;

    /** Metres in one international mile, exact (international yard and pound agreement, 1959). */
    public static final double M_PER_MILE = 1609.344;

    public Length {
        Finite.require("length", m, "m");
    }

    /** Makes a length of {@code feet} international feet. */
    public static Length ofFeet(double feet) {
        return new Length(feet * M_PER_FOOT);
    }

    /** Makes a length of {@code inches} international inches. */
    public static Length ofInches(double inches) {
        return new Length(inches * M_PER_INCH);
    }

    /** Makes a length of {@code miles} international miles. */
    public static Length ofMiles(double miles) {
        return new Length(miles * M_PER_MILE);
    }

    /** Tells this length in international feet. */
    public double feet() {
        return m / M_PER_FOOT;
    }

    /** Tells this length in international inches. */
    public double inches() {
        return m / M_PER_INCH;
    }

    /** Tells this length in international miles. */
    public double miles() {
        return m / M_PER_MILE;
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(m, other.m);
    }
}
