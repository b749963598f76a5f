package org.keelweigh.haul;

/**
 * How two supports or carriers share a load.
 *
 * @param firstKg what the one nearer the stern holds, kilograms; below 0 it has to hold down
 * @param secondKg what the other holds, kilograms
 */
public record Supports(double firstKg, double secondKg) {

    /**
     * Shares a load by moments: {@code R₁ = m (x₂ − x_c)/(x₂ − x₁)}.
     *
     * @param massKg the load, kilograms
     * @param firstM place of the first support, metres
     * @param secondM place of the second, metres, beyond the first
     * @param centreM centre of gravity, metres
     */
    public static Supports share(double massKg, double firstM, double secondM, double centreM) {
        if (!(secondM > firstM)) {
            throw new IllegalArgumentException(
                    "The second support must stand beyond the first at " + firstM + " m, not at " + secondM + " m");
        }
        double first = massKg * (secondM - centreM) / (secondM - firstM);
        return new Supports(first, massKg - first);
    }

    /** Tells the greater of the two, kilograms. */
    public double heavierKg() {
        return Math.max(firstKg, secondKg);
    }
}
