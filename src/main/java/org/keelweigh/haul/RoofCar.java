package org.keelweigh.haul;

import org.jspecify.annotations.Nullable;

/**
 * A car with its rack, as far as somebody said; {@code null} means nobody said.
 *
 * @param lengthM length of the car, metres
 * @param roofLimitKg roof load by the car's manual, kilograms
 * @param barsLimitKg rating of the bars, kilograms
 * @param feetLimitKg rating of the feet, kilograms
 * @param cradleLimitKg rating of the cradles, kilograms
 * @param barSpreadM distance between the bars, metres
 * @param barsMiddleFromRearM the middle between the bars, metres ahead of the rear bumper
 * @param rackMassKg mass of bars and cradles, kilograms
 */
public record RoofCar(
        @Nullable Double lengthM,
        @Nullable Double roofLimitKg,
        @Nullable Double barsLimitKg,
        @Nullable Double feetLimitKg,
        @Nullable Double cradleLimitKg,
        @Nullable Double barSpreadM,
        @Nullable Double barsMiddleFromRearM,
        @Nullable Double rackMassKg) {

    public RoofCar {
        requireAbove0("length of the car", lengthM, "m");
        requireAbove0("roof limit", roofLimitKg, "kg");
        requireAbove0("rating of the bars", barsLimitKg, "kg");
        requireAbove0("rating of the feet", feetLimitKg, "kg");
        requireAbove0("rating of the cradles", cradleLimitKg, "kg");
        requireAbove0("distance between the bars", barSpreadM, "m");
        requireAbove0("place of the bars", barsMiddleFromRearM, "m");
        if (rackMassKg != null && !(rackMassKg >= 0)) {
            throw new IllegalArgumentException("The mass of the rack must be 0 kg or more, not " + rackMassKg);
        }
    }

    /** Makes a car from what people usually know of it. */
    public static RoofCar of(
            @Nullable Double lengthM,
            @Nullable Double roofLimitKg,
            @Nullable Double barSpreadM,
            @Nullable Double rackMassKg) {
        return new RoofCar(lengthM, roofLimitKg, null, null, null, barSpreadM, null, rackMassKg);
    }

    private static void requireAbove0(String what, @Nullable Double value, String unit) {
        if (value != null && !(value > 0 && value < 1000)) {
            throw new IllegalArgumentException("The " + what + " must be above 0 " + unit + ", not " + value);
        }
    }
}
