package org.keelweigh.shortlist;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Where photos are kept. Callers use {@link PhotoAlbum}; this is what a database has to do for it. */
public interface PhotoStore {

    /** Keeps a photo with its pixels. */
    void insert(Photo photo, byte[] picture, byte[] thumbnail);

    /** Finds one photo, deleted or not. */
    Optional<Photo> find(PhotoId id);

    /** Lists a boat's photos that are not deleted, the oldest first. */
    List<Photo> of(CandidateId candidate);

    /** Tells a photo's file; empty if there is none or it is deleted. */
    Optional<byte[]> picture(PhotoId id);

    /** Tells a photo's small file; empty if there is none or it is deleted. */
    Optional<byte[]> thumbnail(PhotoId id);

    /** Writes other words under a photo. */
    void setCaption(PhotoId id, @Nullable String caption);

    /** Deletes a photo so that it can be restored, or restores it. */
    void setDeleted(PhotoId id, boolean deleted);
}
