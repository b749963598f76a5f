package org.keelweigh.shortlist;

import org.jspecify.annotations.Nullable;

/**
 * The launch cart that is owned or planned; {@code null} means nobody said.
 *
 * @param type the cart type's id in the catalogue
 * @param ratedKg load by its label, kilograms
 * @param owned whether it is there already and need not be bought
 */
public record CartFacts(@Nullable String type, @Nullable Double ratedKg, boolean owned) {

    /** Makes facts of which nothing is known. */
    public static CartFacts unknown() {
        return new CartFacts(null, null, false);
    }
}
