package org.keelweigh.shortlist;

import org.jspecify.annotations.Nullable;

/**
 * The car that carries the boat; {@code null} means nobody said.
 *
 * @param lengthM length over all, metres
 * @param roofLimitKg greatest roof load by the car's manual, kilograms
 * @param barHeightM height of the roof bars above the ground, metres
 * @param barSpreadM distance between the bars, metres
 * @param hasBars whether roof bars are there already
 * @param rackMassKg mass of bars and cradles, kilograms
 * @param canTow whether it has a hitch
 */
public record CarFacts(
        @Nullable Double lengthM,
        @Nullable Double roofLimitKg,
        @Nullable Double barHeightM,
        @Nullable Double barSpreadM,
        @Nullable Boolean hasBars,
        @Nullable Double rackMassKg,
        @Nullable Boolean canTow) {

    /** Makes facts of which nothing is known. */
    public static CarFacts unknown() {
        return new CarFacts(null, null, null, null, null, null, null);
    }
}
