package org.keelweigh.haul;

import java.util.List;
import java.util.Optional;

/**
 * The one kind of cart that serves whichever boat wins.
 *
 * @param cart the kind; empty when none is needed or none serves them all
 * @param reason why, as a sentence
 * @param trials every kind of cart tried, in the catalogue's order, with what stands against it
 */
public record OneCart(Optional<CartType> cart, String reason, List<Trial> trials) {

    public OneCart {
        trials = List.copyOf(trials);
    }

    /**
     * One kind of cart under every boat.
     *
     * @param cart the kind
     * @param people how many people the most demanding boat takes
     * @param worstPullN the greatest steady pull, newtons
     * @param against what stands against it, as sentences; empty when it serves
     */
    public record Trial(CartType cart, int people, double worstPullN, List<String> against) {

        public Trial {
            against = List.copyOf(against);
        }

        /** Tells whether it serves every boat. */
        public boolean serves() {
            return against.isEmpty();
        }
    }

    static OneCart none(String reason, List<Trial> trials) {
        return new OneCart(Optional.empty(), reason, trials);
    }

    static OneCart chosen(Trial best, List<Trial> trials, int boats) {
        String whom = boats == 1 ? "this boat" : "all " + boats + " boats that roll";
        String effort = best.people() == 1 ? "with one person" : "with two people";
        String reason = "A " + best.cart().label() + " serves " + whom + " " + effort
                + " and is the cheapest kind that does, about "
                + Figures.plain(best.cart().price().likely()) + " USD: the greatest steady pull is "
                + Figures.newtons(best.worstPullN()) + ".";
        return new OneCart(Optional.of(best.cart()), reason, trials);
    }
}
