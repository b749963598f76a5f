package org.keelweigh.appraisal;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.keelweigh.cost.Argument;
import org.keelweigh.cost.FairPrice;
import org.keelweigh.cost.OfferPlan;

/** What to offer for a boat, or why not to. */
public sealed interface BoatOffer {

    /** The price-book ids of safety kit that a buyer may expect to come with a boat. */
    Set<String> SAFETY_KIT = Set.of("vest", "signal-light", "rescue-kit");

    /** Tells the place of the boat. */
    int boat();

    /**
     * No offer should be made.
     *
     * @param boat the place of the boat
     * @param reason why, as a sentence
     */
    record None(int boat, String reason) implements BoatOffer {}

    /**
     * An offer can be made.
     *
     * @param boat the place of the boat
     * @param asking the asking price, or the usual price where none was given
     * @param tie where it ties with the best other boat
     * @param plan opening, fair and walk-away price; empty when no price above nothing is worth paying
     * @param arguments repairs and missing kit, each with what it may take off
     * @param curve the chance of being the best boat against its price, by rising price
     * @param fair what such a boat usually goes for, part by part
     */
    record Offer(
            int boat,
            double asking,
            Tie tie,
            Optional<OfferPlan> plan,
            List<Argument> arguments,
            List<ChanceAt> curve,
            FairPrice fair)
            implements BoatOffer {

        public Offer {
            arguments = List.copyOf(arguments);
            curve = List.copyOf(curve);
        }
    }

    /**
     * A point of the curve.
     *
     * @param price the price
     * @param chanceBest the chance of being the best boat at that price
     */
    record ChanceAt(double price, double chanceBest) {}
}
