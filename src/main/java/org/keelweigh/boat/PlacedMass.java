package org.keelweigh.boat;

/**
 * A mass and where it sits in the boat.
 *
 * @param what its name in plain words, such as "hull" or "drive"
 * @param massKg kilograms, not negative
 * @param stationM metres forward of the stern
 * @param heightM metres above the underside of the hull
 */
public record PlacedMass(String what, double massKg, double stationM, double heightM) {

    public PlacedMass {
        if (!(massKg >= 0) || Double.isInfinite(massKg)) {
            throw new IllegalArgumentException("The mass of the " + what + " must be 0 kg or more, not " + massKg);
        }
        if (!Double.isFinite(stationM) || !Double.isFinite(heightM)) {
            throw new IllegalArgumentException("The place of the " + what + " must be given in finite metres");
        }
    }
}
