package org.keelweigh.shortlist;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.picture.PictureReading;
import org.springframework.beans.factory.annotation.Autowired;

/** What every database must do with photos and the notes of visits; one subclass for each database. */
abstract class PhotoAlbumContract {

    private static final int MORE_THAN_A_MEGABYTE = 1_300_000;
    private static final Instant START = Instant.parse("2026-04-01T10:15:30Z");

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

        VisitNotes begun = save(boat, VisitNotes.none(), VisitNotes.none().begun(START, 45), "Wren");
        VisitNotes all = save(boat, begun, with(begun, "answers.why", "moving house"), "Wren");
        VisitNotes moved =
                book.move(boat.id(), now -> now.onTheWay(VisitOrder.CHOICE, "hull-uv", List.of("hull-soft")));

        assertThat(book.notes(boat.id())).isEqualTo(moved);
        assertThat(moved).isEqualTo(all.onTheWay(VisitOrder.CHOICE, "hull-uv", List.of("hull-soft")));
        assertThat(all.startedAt()).isEqualTo(START);
        assertThat(all.minutes()).isEqualTo(45);
        assertThat(all.answers()).containsEntry("why", "moving house");
    }

    @Test
    void keepsBothWhenTwoPeopleNoteDifferentThings() {
        Candidate boat = boat();
        VisitNotes seen = save(boat, VisitNotes.none(), with(VisitNotes.none(), "place", "Old boathouse"), "Wren");
        save(boat, seen, with(with(seen, "seller", "Finch"), "answers.why", "moving house"), "Alder");

        Saved<VisitNotes> saved =
                book.save(boat.id(), seen, with(with(seen, "minutes", 30), "answers.age", "four years"), "Wren");

        assertThat(saved).isInstanceOfSatisfying(Saved.Merged.class, merged -> assertThat(merged.by())
                .isEqualTo("Alder"));
        VisitNotes both = book.notes(boat.id());
        assertThat(both).isEqualTo(saved.current());
        assertThat(both.place()).isEqualTo("Old boathouse");
        assertThat(both.seller()).isEqualTo("Finch");
        assertThat(both.minutes()).isEqualTo(30);
        assertThat(both.answers()).containsOnlyKeys("why", "age");
    }

    @Test
    void tellsWhenTwoPeopleNoteTheSameThingAndLetsTheFirstStand() {
        Candidate boat = boat();
        VisitNotes none = VisitNotes.none();
        save(boat, none, with(none, "place", "Old boathouse"), "Alder");

        Saved<VisitNotes> saved = book.save(boat.id(), none, with(none, "place", "New boathouse"), "Wren");

        assertThat(saved)
                .isEqualTo(new Saved.Clashed<>(
                        book.notes(boat.id()),
                        "Alder",
                        List.of(new Clash("visit.place", "New boathouse", "Old boathouse"))));
        assertThat(book.notes(boat.id()).place()).isEqualTo("Old boathouse");
        assertThat(new ClashWords(new Display(UnitSystem.METRIC, "EUR"), id -> id)
                        .of("Alder", ((Saved.Clashed<VisitNotes>) saved).clashes()))
                .isEqualTo("Alder changed the same field (place of the visit) meanwhile: it is “Old boathouse” now, "
                        + "and yours is “New boathouse”.");
    }

    @Test
    void bothGoRoundTheBoatWithoutBeingToldOfEachOther() {
        Candidate boat = boat();
        book.move(boat.id(), now -> now.onTheWay(VisitOrder.WORTH, "hull-uv", List.of("hull-soft")));

        Saved<VisitNotes> saved =
                book.save(boat.id(), VisitNotes.none(), with(VisitNotes.none(), "place", "Old boathouse"), "Wren");

        assertThat(saved).isInstanceOf(Saved.Done.class);
        assertThat(saved.current().at()).isEqualTo("hull-uv");
        assertThat(saved.current().place()).isEqualTo("Old boathouse");
    }

    @Test
    void tellsThatTheBoatIsGone() {
        Candidate boat = boat();
        editing.delete(boat.id(), "Alder");

        assertThat(book.save(boat.id(), VisitNotes.none(), with(VisitNotes.none(), "place", "Shed"), "Wren"))
                .isInstanceOf(Saved.Gone.class);
        assertThat(book.notes(boat.id())).isEqualTo(VisitNotes.none());
    }

    @Test
    void losesNoNoteWhenManySaveAtOnce() {
        Candidate boat = boat();
        List<String> questions =
                IntStream.range(0, 24).mapToObj(each -> "question-" + each).toList();

        questions.parallelStream()
                .forEach(question -> book.save(
                        boat.id(), VisitNotes.none(), with(VisitNotes.none(), "answers." + question, "yes"), "Wren"));

        assertThat(book.notes(boat.id()).answers()).containsOnlyKeys(questions);
    }

    private VisitNotes save(Candidate boat, VisitNotes seen, VisitNotes edited, String who) {
        Saved<VisitNotes> saved = book.save(boat.id(), seen, edited, who);
        assertThat(saved).isInstanceOf(Saved.Done.class);
        return saved.current();
    }

    private static VisitNotes with(VisitNotes notes, String field, Object value) {
        return new FieldPath(field).with(notes, value);
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
