package org.keelweigh.fit;

import org.jspecify.annotations.Nullable;

/**
 * Where and how the boat is used, kept and carried; {@code null} means nobody said.
 *
 * @param gearKg gear aboard on the water, kilograms
 * @param mainWater where most outings go
 * @param hardestWater the hardest water planned
 * @param weedLevel how weedy it is, 0 (none) to 3 (thick)
 * @param leastDepthM usual least depth of the water, metres
 * @param wantedKmPerH speed wanted at an easy effort, km/h
 * @param storeLengthM clear length of the room where it lives, metres
 * @param elsewhere whether it can live somewhere else when it is too long for that room
 * @param carLengthM length of the car, metres
 * @param roofLoadRatio boat, bars and cradles divided by the roof limit
 * @param barSpreadM distance between the roof bars, metres
 * @param canTow whether a trailer can be used instead of the roof
 * @param helper whether somebody helps to load it
 * @param pathM metres from car to water
 * @param setupMinutes minutes from car to afloat as timed
 * @param shape how the bottom is shaped
 * @param gearAssumed whether nobody said the gear's mass, and it is a usual one
 */
public record Setting(
        @Nullable Double gearKg,
        @Nullable Waters mainWater,
        @Nullable Waters hardestWater,
        @Nullable Integer weedLevel,
        @Nullable Double leastDepthM,
        @Nullable Double wantedKmPerH,
        @Nullable Double storeLengthM,
        @Nullable Boolean elsewhere,
        @Nullable Double carLengthM,
        @Nullable Double roofLoadRatio,
        @Nullable Double barSpreadM,
        @Nullable Boolean canTow,
        @Nullable Boolean helper,
        @Nullable Double pathM,
        @Nullable Double setupMinutes,
        @Nullable HullShape shape,
        boolean gearAssumed) {

    public Setting {
        if (weedLevel != null && (weedLevel < 0 || weedLevel > 3)) {
            throw new IllegalArgumentException("The weed level must be 0 to 3, not " + weedLevel);
        }
        requireNotNegative("gear", gearKg, "kg");
        requireNotNegative("depth of the water", leastDepthM, "m");
        requireNotNegative("room's length", storeLengthM, "m");
        requireNotNegative("load on the roof", roofLoadRatio, "of the limit");
        requireNotNegative("distance between the bars", barSpreadM, "m");
        requireNotNegative("way to the water", pathM, "m");
        requireNotNegative("time to set up", setupMinutes, "min");
        requireAbove0("length of the car", carLengthM, "m");
        requireAbove0("speed wanted", wantedKmPerH, "km/h");
    }

    /** Makes a setting in which nothing is assumed. */
    public Setting(
            @Nullable Double gearKg,
            @Nullable Waters mainWater,
            @Nullable Waters hardestWater,
            @Nullable Integer weedLevel,
            @Nullable Double leastDepthM,
            @Nullable Double wantedKmPerH,
            @Nullable Double storeLengthM,
            @Nullable Boolean elsewhere,
            @Nullable Double carLengthM,
            @Nullable Double roofLoadRatio,
            @Nullable Double barSpreadM,
            @Nullable Boolean canTow,
            @Nullable Boolean helper,
            @Nullable Double pathM,
            @Nullable Double setupMinutes,
            @Nullable HullShape shape) {
        this(
                gearKg,
                mainWater,
                hardestWater,
                weedLevel,
                leastDepthM,
                wantedKmPerH,
                storeLengthM,
                elsewhere,
                carLengthM,
                roofLoadRatio,
                barSpreadM,
                canTow,
                helper,
                pathM,
                setupMinutes,
                shape,
                false);
    }

    /** Makes a setting of which nothing is known. */
    public static Setting unknown() {
        return new Setting(
                null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null);
    }

    private static void requireNotNegative(String what, @Nullable Double value, String unit) {
        if (value != null && !(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("The " + what + " must be 0 " + unit + " or more, not " + value);
        }
    }

    private static void requireAbove0(String what, @Nullable Double value, String unit) {
        if (value != null && !(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("The " + what + " must be above 0 " + unit + ", not " + value);
        }
    }
}
