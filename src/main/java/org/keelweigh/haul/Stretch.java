package org.keelweigh.haul;

import org.jspecify.annotations.Nullable;

/**
 * One stretch of the way from the car to the water, as far as somebody said; {@code null} means nobody said.
 *
 * @param name what people call it
 * @param distanceM metres, 0 or more
 * @param surface code of a surface of the catalogue
 * @param slopeRad how steep it is, radians, 0 or more; taken down on the way to the water and up on the way back
 * @param steps number of steps
 * @param stepHeightM the tallest step or kerb, metres
 */
public record Stretch(
        String name,
        @Nullable Double distanceM,
        @Nullable String surface,
        @Nullable Double slopeRad,
        @Nullable Integer steps,
        @Nullable Double stepHeightM) {

    private static final double LONGEST_M = 20_000;
    private static final double STEEPEST_RAD = Math.toRadians(45);
    private static final double TALLEST_M = 2;
    private static final int MOST_STEPS = 2000;

    public Stretch {
        requireWithin("distance", distanceM, LONGEST_M, "m");
        requireWithin("slope", slopeRad, STEEPEST_RAD, "rad");
        requireWithin("height of a step", stepHeightM, TALLEST_M, "m");
        requireWithin("number of steps", steps == null ? null : steps.doubleValue(), MOST_STEPS, "steps");
    }

    /** Makes a stretch of which only the name is known. */
    public static Stretch named(String name) {
        return new Stretch(name, null, null, null, null, null);
    }

    /** Makes a smooth stretch without steps. */
    public static Stretch of(String name, double distanceM, String surface, double slopeRad) {
        return new Stretch(name, distanceM, surface, slopeRad, 0, 0.0);
    }

    private static void requireWithin(String what, @Nullable Double value, double most, String unit) {
        if (value != null && !(value >= 0 && value <= most)) {
            throw new IllegalArgumentException(
                    "The " + what + " must be between 0 and " + most + " " + unit + ", not " + value);
        }
    }
}
