package org.keelweigh.exchange;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.keelweigh.shortlist.Photo;
import org.keelweigh.shortlist.VisitNotes;

/**
 * What an archive says about its photos and about the visits, beside the shortlist's document.
 *
 * @param format always {@link #FORMAT}
 * @param formatVersion always {@link #VERSION}
 * @param photos the photos in their order
 * @param visits the notes of the visits in archives of old; now they stand in the document
 */
record PictureIndex(String format, int formatVersion, List<PhotoPart> photos, List<VisitPart> visits) {

    static final String FORMAT = "keelweigh-pictures";
    static final int VERSION = 1;

    PictureIndex {
        photos = List.copyOf(photos);
        visits = List.copyOf(visits);
    }

    /**
     * A photo.
     *
     * @param id which one; its file is {@code photos/<id>.jpg}
     * @param candidate the boat it shows
     * @param check the check it belongs to
     * @param caption a person's words about it
     * @param addedAt when it was added
     */
    record PhotoPart(
            UUID id,
            UUID candidate,
            @Nullable String check,
            @Nullable String caption,
            Instant addedAt) {

        private static final Instant FIRST = Instant.parse("1970-01-01T00:00:00Z");
        private static final Instant LAST = Instant.parse("2200-01-01T00:00:00Z");
        private static final int LONGEST_CHECK = 100;

        /** Tells whether moment and check can be true. */
        boolean plausible() {
            return addedAt.isAfter(FIRST)
                    && addedAt.isBefore(LAST)
                    && (check == null || check.length() <= LONGEST_CHECK);
        }

        static PhotoPart of(Photo photo) {
            return new PhotoPart(
                    photo.id().value(), photo.candidate().value(), photo.check(), photo.caption(), photo.addedAt());
        }
    }

    /**
     * The notes of a visit.
     *
     * @param candidate the boat that was visited
     * @param notes what was noted
     */
    record VisitPart(UUID candidate, VisitNotes notes) {}
}
