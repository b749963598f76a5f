package org.keelweigh.condition;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What people typed or imported about the listing and its seller. {@code null} means nobody said.
 *
 * @param askingPrice what the seller asks, in the shortlist's currency
 * @param seller through whom it is sold
 * @param distanceM how far away it stands, metres by road, one way
 * @param daysListed for how many days it has been on offer
 * @param included gear that comes with it: price-book id to count
 * @param signals signs about the boat's history or the seller that somebody looked for: signal id to whether it was there
 */
public record ListingFacts(
        @Nullable Double askingPrice,
        @Nullable SellerKind seller,
        @Nullable Double distanceM,
        @Nullable Integer daysListed,
        SortedMap<String, Integer> included,
        SortedMap<String, Boolean> signals) {

    public ListingFacts {
        included = Collections.unmodifiableSortedMap(new TreeMap<>(included));
        signals = Collections.unmodifiableSortedMap(new TreeMap<>(signals));
    }

    /** Makes facts of which nothing is known. */
    public static ListingFacts unknown() {
        return new ListingFacts(null, null, null, null, new TreeMap<>(Map.of()), new TreeMap<>(Map.of()));
    }
}
