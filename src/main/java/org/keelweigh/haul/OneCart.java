package org.keelweigh.haul;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.keelweigh.quantity.FigureWriter;

/**
 * The one kind of cart that serves whichever boat wins.
 *
 * @param cart the kind; empty when none is needed or none serves them all
 * @param price about what one with the rating needed costs, USD of 2025; empty without a kind
 * @param reason why, as a sentence
 * @param trials every kind of cart tried, in the catalogue's order, with what stands against it
 */
public record OneCart(Optional<CartType> cart, OptionalDouble price, String reason, List<Trial> trials) {

    public OneCart {
        trials = List.copyOf(trials);
    }

    /**
     * One kind of cart under every boat.
     *
     * @param cart the kind
     * @param people how many people the most demanding boat takes
     * @param effort how hard it is for whoever finds it easiest, under the most demanding boat, see {@link HaulerAnswer}
     * @param worstPullN the greatest steady pull, newtons
     * @param neededRatingKg rating it has to have for the most demanding boat it holds, kilograms
     * @param against what stands against it, as sentences; empty when it serves
     */
    public record Trial(
            CartType cart, int people, double effort, double worstPullN, double neededRatingKg, List<String> against) {

        public Trial {
            against = List.copyOf(against);
        }

        /**
         * Tells about what one with the rating needed costs, USD of 2025: dearer than usual where it has to be
         * stronger.
         */
        public double price() {
            return neededRatingKg <= cart.ratedKg().likely()
                    ? cart.price().likely()
                    : cart.price().high();
        }

        /** Tells whether it serves every boat. */
        public boolean serves() {
            return against.isEmpty();
        }
    }

    static OneCart none(String reason, List<Trial> trials) {
        return new OneCart(Optional.empty(), OptionalDouble.empty(), reason, trials);
    }

    static OneCart chosen(Trial best, List<Trial> trials, int boats, FigureWriter in) {
        String whom = boats == 1 ? "this boat" : "all " + boats + " boats that roll";
        String effort = best.people() == 1 ? "with one person" : "with two people";
        String reason = "A " + best.cart().label() + " serves " + whom + " " + effort
                + ", and no cheaper kind is as easy to pull, give or take a tenth of the limit. It has to be rated for at least "
                + in.mass(best.neededRatingKg()) + "; the greatest steady pull is " + in.force(best.worstPullN()) + ".";
        return new OneCart(Optional.of(best.cart()), OptionalDouble.of(best.price()), reason, trials);
    }
}
