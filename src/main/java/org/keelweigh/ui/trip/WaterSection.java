package org.keelweigh.ui.trip;

import java.util.List;
import org.keelweigh.fit.Waters;
import org.keelweigh.shortlist.Bound;
import org.keelweigh.ui.format.Quantity;

/** Where the boat will go, how often and with what aboard. */
final class WaterSection extends Sheet {

    WaterSection(Fields fields) {
        super(
                "On the water",
                "Where most outings go decides which kind of boat suits; how often you go drives wear and cost per outing.");
        add(row(
                fields.choice("trip.mainWater", "Main water", Waters.class, Waters::label),
                fields.choice("trip.hardestWater", "Hardest water you plan", Waters.class, Waters::label),
                fields.level(
                        "trip.weedLevel",
                        "Weed",
                        List.of("none", "here and there", "often in the way", "thick: drives clog")),
                fields.quantity(
                        "trip.leastDepthM",
                        "Least depth",
                        Quantity.BREADTH,
                        Bound.WATER_DEPTH,
                        "Shallowest water you usually cross")));
        add(row(
                fields.quantity("trip.outingsPerYear", "Outings a year", Quantity.NUMBER, Bound.OUTINGS),
                fields.quantity(
                        "trip.gearMassKg",
                        "Gear aboard",
                        Quantity.MASS,
                        Bound.GEAR_MASS,
                        "Everything beside people, boat and drive"),
                fields.quantity(
                        "trip.gearOnCartKg",
                        "Gear left aboard on the cart",
                        Quantity.MASS,
                        Bound.GEAR_MASS,
                        "What you do not carry by hand to the water")));
        add(caution(
                "The water you plan sets what is safe: dress for the water's temperature, wear a life jacket, and check wind and "
                        + "current on the day. No figure here replaces that."));
    }
}
