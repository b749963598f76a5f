package org.keelweigh.shortlist;

import java.util.UUID;

/**
 * Names a photo. It is drawn by chance and cannot be guessed, because it is also the photo's address.
 *
 * @param value the identifier
 */
public record PhotoId(UUID value) {

    /** Makes an identifier nobody has used. */
    public static PhotoId fresh() {
        return new PhotoId(UUID.randomUUID());
    }

    @Override
    public String toString() {
        return value.toString();
    }
}
