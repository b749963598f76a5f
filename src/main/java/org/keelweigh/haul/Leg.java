package org.keelweigh.haul;

import org.keelweigh.quantity.Estimate;

/** What one stretch asks of cart and people. */
public sealed interface Leg permits Leg.Rolled, Leg.Carried {

    /** Tells the ground. */
    Ground ground();

    /**
     * A stretch over which the boat rolls.
     *
     * @param ground the ground
     * @param up forces on the way up, with the likely rolling coefficient
     * @param down forces on the way down
     * @param pullN steady pull on the way up with low, likely and high rolling coefficient, newtons
     * @param startN pull to set off on the way up, newtons: steady pull times the surface's start factor
     * @param holdBackN what must be held back on the way down, newtons, 0 where the boat does not roll off by itself
     * @param kerbN pull that drags the wheels over the tallest step, newtons; infinite where the wheels cannot climb it
     * @param perWheelN load of one wheel on the level, newtons
     * @param neededRatingKg rating a cart needs here, kilograms
     */
    record Rolled(
            Ground ground,
            CartForces up,
            CartForces down,
            Estimate pullN,
            double startN,
            double holdBackN,
            double kerbN,
            double perWheelN,
            double neededRatingKg)
            implements Leg {}

    /**
     * A stretch over which the boat, stripped and empty, is carried by two.
     *
     * @param ground the ground
     * @param eachKg what each of two carriers holds, kilograms
     */
    record Carried(Ground ground, double eachKg) implements Leg {}
}
