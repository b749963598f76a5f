package org.keelweigh.shortlist;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A photo of a candidate, without its pixels.
 *
 * @param id which one
 * @param candidate the boat it shows
 * @param check the check it belongs to, by its id; {@code null} for the boat as a whole
 * @param caption a person's words about it
 * @param addedAt when it was added
 * @param width pixels
 * @param height pixels
 * @param mediaType such as {@code image/jpeg}
 * @param sizeBytes bytes of the picture
 */
public record Photo(
        PhotoId id,
        CandidateId candidate,
        @Nullable String check,
        @Nullable String caption,
        Instant addedAt,
        int width,
        int height,
        String mediaType,
        int sizeBytes) {}
