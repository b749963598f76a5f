package org.keelweigh.shortlist;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.picture.PictureReading;
import org.springframework.beans.factory.annotation.Autowired;

/** What every database must do with photos and the notes of visits; one subclass for each database. */
abstract class PhotoAlbumContract {

    private static final int MORE_THAN_A_MEGABYTE = 1_300_000;

    @Autowired
    ShortlistEditing editing;

    @Autowired
    PhotoAlbum album;

    @Autowired
    VisitBook book;

    @Test
    void keepsAPhotoWithItsPixels() {
        Candidate boat = boat();
        PictureReading.Accepted picture = picture(MORE_THAN_A_MEGABYTE);

        Photo photo = album.add(
                        boat.id(),
                        "hull-crack",
                        " by the seat ",
                        Instant.parse("2026-04-01T10:15:30Z"),
                        picture,
                        "Wren")
                .orElseThrow();

        assertThat(album.photos(boat.id())).containsExactly(photo);
        assertThat(photo.caption()).isEqualTo("by the seat");
        assertThat(photo.check()).isEqualTo("hull-crack");
        assertThat(photo.sizeBytes()).isEqualTo(MORE_THAN_A_MEGABYTE);
        assertThat(album.picture(photo.id()))
                .hasValueSatisfying(bytes -> assertThat(bytes).isEqualTo(picture.jpeg()));
        assertThat(album.thumbnail(photo.id()))
                .hasValueSatisfying(bytes -> assertThat(bytes).isEqualTo(picture.thumbnail()));
    }

    @Test
    void undoesTheDeletionOfAPhoto() {
        Candidate boat = boat();
        Photo photo = album.add(boat.id(), null, picture(9), "Wren").orElseThrow();
        album.delete(photo.id(), "Wren");
        assertThat(album.photos(boat.id())).isEmpty();
        assertThat(album.picture(photo.id())).isEmpty();
        assertThat(album.thumbnail(photo.id())).isEmpty();

        album.restore(photo.id(), "Wren");

        assertThat(album.photos(boat.id())).containsExactly(photo);
    }

    @Test
    void changesTheWordsUnderAPhoto() {
        Candidate boat = boat();
        Photo photo = album.add(boat.id(), null, picture(9), "Wren").orElseThrow();

        album.caption(photo.id(), "<b>stern</b>", "Wren");
        assertThat(album.photos(boat.id())).extracting(Photo::caption).containsExactly("<b>stern</b>");

        album.caption(photo.id(), " ", "Wren");
        assertThat(album.photos(boat.id()).getFirst().caption()).isNull();
    }

    @Test
    void keepsOnlySoManyPhotosOfOneBoat() {
        Candidate boat = boat();
        for (int i = 0; i < PhotoAlbum.MOST_PER_BOAT; i++) {
            assertThat(album.add(boat.id(), null, picture(4), "Wren")).isPresent();
        }

        assertThat(album.add(boat.id(), null, picture(4), "Wren")).isEmpty();
    }

    @Test
    void keepsTheNotesOfAVisit() {
        Candidate boat = boat();
        assertThat(book.notes(boat.id())).isEqualTo(VisitNotes.none());

        Instant start = Instant.parse("2026-04-01T10:15:30Z");
        book.change(boat.id(), notes -> notes.begun(start, 45));
        book.change(boat.id(), notes -> notes.withSkipped(List.of("hull-soft")).withAnswer("why", "moving house"));
        VisitNotes all =
                book.change(boat.id(), notes -> notes.withPeople("Old boathouse", "Wren, Alder", "Finch", "Wren")
                        .withTerms("paddle, cart", 820.0));

        assertThat(book.notes(boat.id())).isEqualTo(all);
        assertThat(all.startedAt()).isEqualTo(start);
        assertThat(all.minutes()).isEqualTo(45);
        assertThat(all.answers()).containsEntry("why", "moving house");
        assertThat(all.skipped()).containsExactly("hull-soft");
        assertThat(all.agreedPrice()).isEqualTo(820.0);
    }

    private Candidate boat() {
        Shortlist list = editing.create(ShortlistData.named("Photos"), "Wren");
        return editing.add(list.id(), CandidateData.of("Green pedal boat", BoatKind.PEDAL_KAYAK), "Wren");
    }

    private static PictureReading.Accepted picture(int size) {
        byte[] bytes = new byte[size];
        new Random(size).nextBytes(bytes);
        return new PictureReading.Accepted(bytes, "small".getBytes(StandardCharsets.US_ASCII), 2000, 1500);
    }
}
