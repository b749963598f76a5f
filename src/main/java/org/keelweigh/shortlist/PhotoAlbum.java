package org.keelweigh.shortlist;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.keelweigh.picture.PictureReading;
import org.keelweigh.shortlist.ShortlistStore.Entry;
import org.keelweigh.shortlist.ShortlistStore.Kind;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The photos of boats: added, shown, captioned, deleted and restored. */
@Service
@Transactional
public class PhotoAlbum {

    /** Photos kept of one boat. */
    public static final int MOST_PER_BOAT = 120;

    private static final int LONGEST_CAPTION = 300;

    private final PhotoStore store;
    private final ShortlistStore shortlists;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    PhotoAlbum(PhotoStore store, ShortlistStore shortlists, Clock clock, ApplicationEventPublisher events) {
        this.store = store;
        this.shortlists = shortlists;
        this.clock = clock;
        this.events = events;
    }

    /** Adds a photo that was taken in; empty if the boat has as many as are kept. */
    public Optional<Photo> add(CandidateId boat, @Nullable String check, PictureReading.Accepted picture, String who) {
        return add(boat, check, null, clock.instant(), picture, who);
    }

    /** Adds a photo that came with an imported file; empty if the boat has as many as are kept. */
    public Optional<Photo> add(
            CandidateId boat,
            @Nullable String check,
            @Nullable String caption,
            Instant addedAt,
            PictureReading.Accepted picture,
            String who) {
        if (store.of(boat).size() >= MOST_PER_BOAT) {
            return Optional.empty();
        }
        byte[] jpeg = picture.jpeg();
        Photo photo = new Photo(
                PhotoId.fresh(),
                boat,
                check,
                shortened(caption),
                addedAt.truncatedTo(ChronoUnit.MICROS),
                picture.width(),
                picture.height(),
                PictureReading.Accepted.MEDIA_TYPE,
                jpeg.length);
        store.insert(photo, jpeg, picture.thumbnail());
        tell(boat, who);
        return Optional.of(photo);
    }

    /** Lists a boat's photos, the oldest first. */
    @Transactional(readOnly = true)
    public List<Photo> photos(CandidateId boat) {
        return store.of(boat);
    }

    /** Tells a photo's file; empty if there is none or it is deleted. */
    @Transactional(readOnly = true)
    public Optional<byte[]> picture(PhotoId id) {
        return store.picture(id);
    }

    /** Tells a photo's small file; empty if there is none or it is deleted. */
    @Transactional(readOnly = true)
    public Optional<byte[]> thumbnail(PhotoId id) {
        return store.thumbnail(id);
    }

    /** Writes other words under a photo; blank ones take them away. */
    public void caption(PhotoId id, String caption, String who) {
        store.setCaption(id, shortened(caption));
        store.find(id).ifPresent(photo -> tell(photo.candidate(), who));
    }

    /** Deletes a photo; {@link #restore} undoes it. */
    public void delete(PhotoId id, String who) {
        store.setDeleted(id, true);
        store.find(id).ifPresent(photo -> tell(photo.candidate(), who));
    }

    /** Undoes a deletion. */
    public void restore(PhotoId id, String who) {
        store.setDeleted(id, false);
        store.find(id).ifPresent(photo -> tell(photo.candidate(), who));
    }

    private static @Nullable String shortened(@Nullable String caption) {
        if (caption == null || caption.isBlank()) {
            return null;
        }
        String words = caption.strip();
        return words.length() <= LONGEST_CAPTION ? words : words.substring(0, LONGEST_CAPTION);
    }

    private void tell(CandidateId boat, String who) {
        shortlists
                .find(Kind.CANDIDATE, boat.value())
                .map(Entry::shortlist)
                .ifPresent(shortlist -> events.publishEvent(new FactsChanged(new ShortlistId(shortlist), who)));
    }
}
