package org.keelweigh.haul;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.Boat;

/**
 * What to assess: this boat, brought over this way by these people.
 *
 * @param boat the boat
 * @param rigged whether seat, drive and battery stay aboard on the cart
 * @param gearKg gear left aboard on the cart, kilograms, 0 or more
 * @param cart the cart; {@code null} lets the best one be assumed, see {@link CartPlanner#oneForAll}
 * @param stretches the way; empty means nobody said
 * @param haulers who is there; empty means nobody said, and one average adult is assumed
 * @param rollsInflatable whether an inflatable goes on a cart, blown up, instead of in its bag
 */
public record CartRequest(
        Boat boat,
        boolean rigged,
        double gearKg,
        @Nullable CartInHand cart,
        List<Stretch> stretches,
        List<Hauler> haulers,
        boolean rollsInflatable) {

    private static final double MOST_GEAR_KG = 500;

    public CartRequest {
        if (!(gearKg >= 0 && gearKg <= MOST_GEAR_KG)) {
            throw new IllegalArgumentException(
                    "The gear left aboard must be between 0 and " + MOST_GEAR_KG + " kg, not " + gearKg);
        }
        stretches = List.copyOf(stretches);
        haulers = List.copyOf(haulers);
    }

    /** Makes the request for a boat with everything left aboard, without gear, cart unknown. */
    public static CartRequest of(Boat boat, List<Stretch> stretches, List<Hauler> haulers) {
        return new CartRequest(boat, true, 0, null, stretches, haulers, false);
    }

    /** Makes the same request with a cart. */
    public CartRequest withCart(CartInHand other) {
        return new CartRequest(boat, rigged, gearKg, other, stretches, haulers, rollsInflatable);
    }

    /** Makes the same request with seat, drive and battery aboard or off. */
    public CartRequest withRigged(boolean aboard) {
        return new CartRequest(boat, aboard, gearKg, cart, stretches, haulers, rollsInflatable);
    }

    /** Makes the same request with other gear left aboard. */
    public CartRequest withGearKg(double other) {
        return new CartRequest(boat, rigged, other, cart, stretches, haulers, rollsInflatable);
    }

    /** Tells whether the boat travels deflated in its bag. */
    public boolean inBag() {
        return !boat.kind().rigid() && !rollsInflatable;
    }
}
