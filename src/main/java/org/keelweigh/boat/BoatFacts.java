package org.keelweigh.boat;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What people typed or imported about a boat. {@code null} means nobody said; {@link BoatDefaults#resolve} fills such
 * gaps with marked assumptions.
 *
 * @param kind what kind of boat
 * @param material what the hull is made of
 * @param drive what moves it beside a paddle or oars
 * @param modelYear the calendar year of the model, such as 2021
 * @param priceNew what the same or the nearest boat costs new today, in the shortlist's currency
 * @param lengthM length over all, metres
 * @param beamM greatest breadth, metres
 * @param bareMassKg mass of the hull without seat, drive, battery and loose fittings, kilograms
 * @param seatMassKg mass of all removable seats, kilograms
 * @param driveMassKg mass of the drive or motor, kilograms
 * @param batteryMassKg mass of the battery, kilograms
 * @param fittingsMassKg mass of everything else fastened to the hull (rudder, rod holders, electronics), kilograms
 * @param ratedLoadKg greatest load by the plate or the manual, kilograms
 * @param draughtM least water it needs with the drive down, metres
 * @param seats the seats from stern to bow; empty means nobody said
 */
public record BoatFacts(
        BoatKind kind,
        @Nullable HullMaterial material,
        @Nullable DriveKind drive,
        @Nullable Integer modelYear,
        @Nullable Double priceNew,
        @Nullable Double lengthM,
        @Nullable Double beamM,
        @Nullable Double bareMassKg,
        @Nullable Double seatMassKg,
        @Nullable Double driveMassKg,
        @Nullable Double batteryMassKg,
        @Nullable Double fittingsMassKg,
        @Nullable Double ratedLoadKg,
        @Nullable Double draughtM,
        List<SeatFacts> seats) {

    public BoatFacts {
        seats = List.copyOf(seats);
    }

    /** Makes facts of which only the kind is known. */
    public static BoatFacts of(BoatKind kind) {
        return new BoatFacts(
                kind, null, null, null, null, null, null, null, null, null, null, null, null, null, List.of());
    }
}
