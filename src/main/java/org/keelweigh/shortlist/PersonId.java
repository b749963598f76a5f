package org.keelweigh.shortlist;

import java.util.UUID;

/**
 * Tells one person from all others.
 *
 * @param value the identifier
 */
public record PersonId(UUID value) {

    /** Makes an identifier nobody has used. */
    public static PersonId fresh() {
        return new PersonId(UUID.randomUUID());
    }

    @Override
    public String toString() {
        return value.toString();
    }
}
