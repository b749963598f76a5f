package org.keelweigh.quantity;

/**
 * A speed through the water.
 *
 * @param mPerS metres per second; any finite number
 */
public record Speed(double mPerS) {

    public Speed {
        Finite.require("speed", mPerS, "m/s");
    }

    /** Makes a speed of {@code kmPerH} kilometres per hour. */
    public static Speed ofKmPerHour(double kmPerH) {
        return new Speed(kmPerH / 3.6);
    }

    /** Tells this speed in kilometres per hour. */
    public double kmPerHour() {
        return mPerS * 3.6;
    }

    /** Tells this speed in statute miles per hour (1 mph = 0.44704 m/s, exact). */
    public double milesPerHour() {
        return mPerS / 0.44704;
    }

    /** Tells this speed in knots (1 kn = 1852/3600 m/s, exact). */
    public double knots() {
        return mPerS * 3600 / 1852;
    }
}
