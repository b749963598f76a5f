package org.keelweigh.haul;

import java.util.List;
import java.util.Optional;

/**
 * A boat on a cart, over a way, with its verdict.
 *
 * @param verdict how many people it takes
 * @param reasons why, as sentences; never empty
 * @param load the boat as it is rolled: masses and centre of gravity
 * @param cart the cart
 * @param cartAssumed whether nobody named the cart
 * @param axleStationM where the axle stands, metres from the stern
 * @param gripStationM where the bow is held, metres from the stern
 * @param gripHeightM height of the grip above the underside of the hull, metres
 * @param axle where the axle would best stand
 * @param legs each stretch in order, at least one; a stretch with stairs in it gives two, rolled and carried
 * @param worst index of the stretch that decides: the one with the greatest pull, or the first that is carried when
 *     none rolls
 * @param neededRatingKg rating the cart needs over the whole way, kilograms
 * @param countedRatingKg rating that can be counted on, kilograms; nothing if nobody gave one
 * @param loadsDrainHoles whether the cart's posts load the rims of the drain holes
 * @param haulers each hauler, at least one
 * @param assumptions what was assumed, as sentences
 * @param cautions what to keep in mind, as sentences
 */
public record CartPlan(
        CartVerdict verdict,
        List<String> reasons,
        RigidLoad load,
        CartType cart,
        boolean cartAssumed,
        double axleStationM,
        double gripStationM,
        double gripHeightM,
        AxleAdvice axle,
        List<Leg> legs,
        int worst,
        double neededRatingKg,
        Optional<Double> countedRatingKg,
        boolean loadsDrainHoles,
        List<HaulerAnswer> haulers,
        List<String> assumptions,
        List<String> cautions)
        implements CartAnswer {

    public CartPlan {
        reasons = List.copyOf(reasons);
        legs = List.copyOf(legs);
        haulers = List.copyOf(haulers);
        assumptions = List.copyOf(assumptions);
        cautions = List.copyOf(cautions);
    }

    @Override
    public double massKg() {
        return load.massKg();
    }

    /** Tells the stretch that decides. */
    public Leg worstLeg() {
        return legs.get(worst);
    }

    /** Tells the stretches over which the boat rolls, in order. */
    public List<Leg.Rolled> rolled() {
        return legs.stream()
                .filter(Leg.Rolled.class::isInstance)
                .map(Leg.Rolled.class::cast)
                .toList();
    }

    @Override
    public double worstPullN() {
        return rolled().stream()
                .mapToDouble(each -> each.pullN().likely())
                .max()
                .orElse(0);
    }

    /** Tells the greatest force to be held back going down, newtons. */
    public double worstHoldBackN() {
        return rolled().stream().mapToDouble(Leg.Rolled::holdBackN).max().orElse(0);
    }

    /** Tells the greatest pull to set off, newtons. */
    public double worstStartN() {
        return rolled().stream().mapToDouble(Leg.Rolled::startN).max().orElse(0);
    }
}
