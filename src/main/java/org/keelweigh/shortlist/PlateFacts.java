package org.keelweigh.shortlist;

import org.jspecify.annotations.Nullable;

/**
 * What is known of the hull identification number.
 *
 * @param state the plate's state by its code; {@code null} means nobody looked
 * @param number the characters as read; {@code null} when none were
 */
public record PlateFacts(@Nullable String state, @Nullable String number) {

    /** Makes facts of which nothing is known. */
    public static PlateFacts unknown() {
        return new PlateFacts(null, null);
    }
}
