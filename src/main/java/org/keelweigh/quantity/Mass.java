package org.keelweigh.quantity;

/**
 * A mass.
 *
 * @param kg kilograms; any finite number
 */
public record Mass(double kg) implements Comparable<Mass> {

    /** Kilograms in one avoirdupois pound, exact (NIST SP 811, 2008, App. B). */
    public static final double KG_PER_POUND = 0.45359237;

    /** Standard gravity in m/s², exact by definition (NIST SP 811, 2008, App. B). */
    public static final double STANDARD_GRAVITY = 9.80665;

    public Mass {
        Finite.require("mass", kg, "kg");
    }

    /** Makes a mass of {@code pounds} avoirdupois pounds. */
    public static Mass ofPounds(double pounds) {
        return new Mass(pounds * KG_PER_POUND);
    }

    /** Tells this mass in avoirdupois pounds. */
    public double pounds() {
        return kg / KG_PER_POUND;
    }

    /** Tells the weight of this mass, {@code m·g0}. */
    public Force weight() {
        return new Force(kg * STANDARD_GRAVITY);
    }

    @Override
    public int compareTo(Mass other) {
        return Double.compare(kg, other.kg);
    }
}
