package org.keelweigh.haul;

import java.util.List;
import org.keelweigh.quantity.FigureWriter;
import org.keelweigh.quantity.Speed;

/** How a boat gets from the car to the water: on a cart or in its bag. */
public sealed interface CartAnswer permits CartPlan, BagCarry {

    /** What every verdict on lifting a boat has to be read with. */
    List<String> LIFT_CAUTIONS = List.of(
            "Estimate, not a promise: follow the manuals of boat, cart, rack and car, and the local law.",
            "Test with a light load first.");

    /** Lists what every verdict on moving a boat has to be read with, as sentences. */
    static List<String> cautions(FigureWriter in) {
        String wind = in.speed(Speed.ofKmPerHour(25).mPerS());
        return List.of(
                LIFT_CAUTIONS.get(0),
                LIFT_CAUTIONS.get(1),
                "Wind over " + wind + ", algae on a ramp and a path across traffic call for a second person.");
    }

    /** Tells how many people it takes. */
    CartVerdict verdict();

    /** Tells why, as sentences. */
    List<String> reasons();

    /** Tells the mass that is rolled or carried, kilograms. */
    double massKg();

    /** Tells the greatest steady pull over all stretches, newtons; 0 where nothing is rolled. */
    double worstPullN();

    /** Tells what the way asks of each hauler. */
    List<HaulerAnswer> haulers();

    /** Tells what was assumed, as sentences. */
    List<String> assumptions();

    /** Tells what to keep in mind, as sentences. */
    List<String> cautions();
}
