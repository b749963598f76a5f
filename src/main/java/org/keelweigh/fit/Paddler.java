package org.keelweigh.fit;

import org.jspecify.annotations.Nullable;

/**
 * Somebody aboard, as far as somebody said; {@code null} means nobody said.
 *
 * @param name what people call them
 * @param massKg kilograms, dressed for the water, 5 to 400
 * @param heightM metres, 0.4 to 2.6
 * @param hipWidthM width across the hips, seated, metres, 0.1 to 1.2
 * @param use how they mean to use the boat
 * @param massAssumed whether nobody said the mass, and it is a usual one
 * @param useAssumed whether nobody said the use, and it is a usual one
 */
public record Paddler(
        String name,
        @Nullable Double massKg,
        @Nullable Double heightM,
        @Nullable Double hipWidthM,
        @Nullable PaddlingUse use,
        boolean massAssumed,
        boolean useAssumed) {

    public Paddler {
        requireWithin(name, "mass", massKg, 5, 400, "kg");
        requireWithin(name, "height", heightM, 0.4, 2.6, "m");
        requireWithin(name, "hip width", hipWidthM, 0.1, 1.2, "m");
    }

    /** Makes a paddler about whom nothing is assumed. */
    public Paddler(
            String name,
            @Nullable Double massKg,
            @Nullable Double heightM,
            @Nullable Double hipWidthM,
            @Nullable PaddlingUse use) {
        this(name, massKg, heightM, hipWidthM, use, false, false);
    }

    /** Makes a paddler of whom only the name is known. */
    public static Paddler named(String name) {
        return new Paddler(name, null, null, null, null);
    }

    private static void requireWithin(
            String name, String what, @Nullable Double value, double least, double most, String unit) {
        if (value != null && !(value >= least && value <= most)) {
            throw new IllegalArgumentException("The " + what + " of " + name + " must be between " + least + " and "
                    + most + " " + unit + ", not " + value);
        }
    }
}
