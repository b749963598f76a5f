package org.keelweigh.shortlist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.keelweigh.KeelweighApplication;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Outcome;
import org.keelweigh.picture.PictureReading;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

/** Kills a program in the middle of a visit, as an empty battery would, and looks at what is left. */
class KilledInTheMiddleTests {

    private static final String SAVED = "everything so far is saved: ";

    @Test
    void losesNothingThatWasTapped(@TempDir Path folder) throws IOException, InterruptedException {
        Process visit = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx512m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Visit.class.getName(),
                        folder.toString())
                .redirectErrorStream(true)
                .start();
        ShortlistId list;
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(visit.getInputStream(), StandardCharsets.UTF_8))) {
            String last = said.lines()
                    .filter(line -> line.contains(SAVED) || line.contains("Application run failed"))
                    .findFirst()
                    .orElse("the program ended without a word");
            assertThat(last).contains(SAVED);
            list = new ShortlistId(UUID.fromString(last.substring(last.indexOf(SAVED) + SAVED.length())));
            visit.destroyForcibly();
            assertThat(visit.waitFor(30, TimeUnit.SECONDS)).isTrue();
        }

        try (ConfigurableApplicationContext again = open(folder)) {
            Candidate boat = again.getBean(ShortlistEditing.class)
                    .facts(list)
                    .orElseThrow()
                    .candidates()
                    .getFirst();
            assertThat(boat.data().findings())
                    .containsExactly(Finding.of("hin-read", Outcome.FINE), Finding.of("hull-crack", Outcome.MAJOR));
            PhotoAlbum album = again.getBean(PhotoAlbum.class);
            assertThat(album.photos(boat.id())).hasSize(1);
            assertThat(album.picture(album.photos(boat.id()).getFirst().id()))
                    .hasValueSatisfying(bytes -> assertThat(bytes).hasSize(2_000_000));
            VisitNotes notes = again.getBean(VisitBook.class).notes(boat.id());
            assertThat(notes.place()).isEqualTo("Old boathouse");
            assertThat(notes.order()).isEqualTo(VisitOrder.WORTH);
            assertThat(notes.at()).isEqualTo("hull-uv");
            assertThat(notes.skipped()).containsExactly("hull-soft");
        }
    }

    private static ConfigurableApplicationContext open(Path folder) {
        return new SpringApplicationBuilder(KeelweighApplication.class)
                .run("--server.port=0", "--keelweigh.data-folder=" + folder);
    }

    /** The program that is killed. */
    static final class Visit {

        public static void main(String[] folder) throws InterruptedException {
            ConfigurableApplicationContext app = open(Path.of(folder[0]));
            ShortlistEditing editing = app.getBean(ShortlistEditing.class);
            Shortlist list = editing.create(ShortlistData.named("Spring"), "Wren");
            Candidate boat = editing.add(list.id(), CandidateData.of("Green boat", BoatKind.PEDAL_KAYAK), "Wren");
            boat = tap(editing, boat, Finding.of("hin-read", Outcome.FINE));
            app.getBean(PhotoAlbum.class)
                    .add(
                            boat.id(),
                            "hull-crack",
                            new PictureReading.Accepted(new byte[2_000_000], new byte[9], 4, 3),
                            "Wren");
            VisitBook book = app.getBean(VisitBook.class);
            VisitNotes notes = new FieldPath("place").with(VisitNotes.none(), "Old boathouse");
            book.save(boat.id(), VisitNotes.none(), notes, "Wren");
            book.move(boat.id(), now -> now.onTheWay(VisitOrder.WORTH, "hull-uv", List.of("hull-soft")));
            tap(editing, boat, Finding.of("hull-crack", Outcome.MAJOR));
            System.out.println(SAVED + list.id());
            Thread.sleep(TimeUnit.MINUTES.toMillis(5));
        }

        private static Candidate tap(ShortlistEditing editing, Candidate boat, Finding finding) {
            return editing.save(
                            new Candidate(
                                    boat.id(),
                                    boat.shortlist(),
                                    boat.version(),
                                    boat.data().withFinding(finding)),
                            "Wren")
                    .current();
        }
    }
}
