package org.keelweigh.shortlist;

import java.util.UUID;

/**
 * Tells one shortlist from all others.
 *
 * @param value the identifier
 */
public record ShortlistId(UUID value) {

    /** Makes an identifier nobody has used. */
    public static ShortlistId fresh() {
        return new ShortlistId(UUID.randomUUID());
    }

    @Override
    public String toString() {
        return value.toString();
    }
}
