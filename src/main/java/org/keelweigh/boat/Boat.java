package org.keelweigh.boat;

import java.util.ArrayList;
import java.util.List;

/**
 * A boat of which every figure is known, if only by assumption.
 *
 * @param kind what kind of boat
 * @param material what the hull is made of
 * @param materialAssumed whether nobody said what it is made of
 * @param drive what moves it beside a paddle or oars
 * @param modelYear calendar year of the model
 * @param priceNew price new today, in the shortlist's currency
 * @param lengthM length over all, metres
 * @param beamM greatest breadth, metres
 * @param depthM height of the hull amidships, metres; always an assumption
 * @param bareMassKg hull alone, kilograms
 * @param seatMassKg all removable seats, kilograms
 * @param driveMassKg drive or motor, kilograms
 * @param batteryMassKg battery, kilograms
 * @param fittingsMassKg other fittings, kilograms
 * @param ratedLoadKg greatest load, kilograms
 * @param draughtM least water it needs with the drive down, metres
 * @param seats the seats from stern to bow, at least one
 * @param driveStationM where the drive sits, metres from the stern; always an assumption
 */
public record Boat(
        BoatKind kind,
        HullMaterial material,
        boolean materialAssumed,
        DriveKind drive,
        Figure modelYear,
        Figure priceNew,
        Figure lengthM,
        Figure beamM,
        Figure depthM,
        Figure bareMassKg,
        Figure seatMassKg,
        Figure driveMassKg,
        Figure batteryMassKg,
        Figure fittingsMassKg,
        Figure ratedLoadKg,
        Figure draughtM,
        List<Seat> seats,
        Figure driveStationM) {

    /** The share of the hull's length, from the stern, at which a bare hull balances. */
    private static final double HULL_BALANCE = 0.5;

    public Boat {
        seats = List.copyOf(seats);
        if (seats.isEmpty()) {
            throw new IllegalArgumentException("A boat has at least one seat");
        }
    }

    /**
     * A seat of which both figures are known.
     *
     * @param stationM where the paddler's weight acts, metres from the stern
     * @param widthM inner width between the hips, metres
     */
    public record Seat(Figure stationM, Figure widthM) {}

    /** Tells the mass of the boat with all that is fastened to it, kilograms. */
    public double riggedMassKg() {
        return strippedMassKg() + seatMassKg.value() + driveMassKg.value() + batteryMassKg.value();
    }

    /** Tells the mass of hull and fixed fittings once seat, drive and battery are taken off, kilograms. */
    public double strippedMassKg() {
        return bareMassKg.value() + fittingsMassKg.value();
    }

    /** Tells the age in whole years in calendar year {@code year}, at least 0. */
    public int ageIn(int year) {
        return Math.max(0, year - (int) Math.round(modelYear.value()));
    }

    /** Tells the masses of hull and fixed fittings with where they sit. */
    public List<PlacedMass> strippedMasses() {
        double half = lengthM.value() * HULL_BALANCE;
        List<PlacedMass> masses = new ArrayList<>();
        masses.add(new PlacedMass("hull", bareMassKg.value(), half, depthM.value() * 0.4));
        if (fittingsMassKg.value() > 0) {
            masses.add(new PlacedMass("fittings", fittingsMassKg.value(), half, depthM.value()));
        }
        return List.copyOf(masses);
    }

    /** Tells the masses that can be taken off for carrying: seats, drive, battery, with where they sit. */
    public List<PlacedMass> removableMasses() {
        List<PlacedMass> masses = new ArrayList<>();
        for (Seat seat : seats) {
            add(
                    masses,
                    "seat",
                    seatMassKg.value() / seats.size(),
                    seat.stationM().value(),
                    depthM.value() * 0.8);
        }
        add(masses, "drive", driveMassKg.value(), driveStationM.value(), depthM.value() * 0.7);
        add(
                masses,
                "battery",
                batteryMassKg.value(),
                seats.getFirst().stationM().value(),
                depthM.value() * 0.5);
        return List.copyOf(masses);
    }

    private static void add(List<PlacedMass> masses, String what, double massKg, double stationM, double heightM) {
        if (massKg > 0) {
            masses.add(new PlacedMass(what, massKg, stationM, heightM));
        }
    }
}
