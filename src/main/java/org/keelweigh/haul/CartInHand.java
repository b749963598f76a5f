package org.keelweigh.haul;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A cart that somebody owns or means to buy.
 *
 * @param type what kind
 * @param ratedKg load by its label or its seller, kilograms; {@code null} means nobody said
 * @param labelled whether that rating is from a label of the maker; of any other claim only 60 % count
 * @param axleStationM where the axle stands, metres from the stern; {@code null} means where it is best
 */
public record CartInHand(
        CartType type,
        @Nullable Double ratedKg,
        boolean labelled,
        @Nullable Double axleStationM) {

    /** The share of an unlabelled claim that counts (common practice, no source). */
    private static final double UNLABELLED = 0.6;

    public CartInHand {
        if (ratedKg != null && !(ratedKg > 0 && ratedKg <= 1000)) {
            throw new IllegalArgumentException("The cart's rating must be above 0 and at most 1000 kg, not " + ratedKg);
        }
        if (axleStationM != null && !(axleStationM >= 0)) {
            throw new IllegalArgumentException("The axle must stand 0 m or more from the stern, not " + axleStationM);
        }
    }

    /** Makes a cart of which only the kind is known. */
    public static CartInHand of(CartType type) {
        return new CartInHand(type, null, true, null);
    }

    /** Tells the rating that can be counted on, kilograms; nothing if nobody gave one. */
    public Optional<Double> countedRatingKg() {
        return Optional.ofNullable(ratedKg).map(rated -> labelled ? rated : rated * UNLABELLED);
    }
}
