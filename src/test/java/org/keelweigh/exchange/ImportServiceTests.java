package org.keelweigh.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.shortlist.VisitBook;
import org.keelweigh.shortlist.VisitNotes;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;

@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:importing")
class ImportServiceTests {

    @Autowired
    ShortlistImport reading;

    @Autowired
    ImportService importing;

    @Autowired
    ShortlistEditing editing;

    @Autowired
    VisitBook book;

    @Test
    void keepsIdentifiersThatAreFreeAndMakesFreshOnesElsewhere() {
        ShortlistDocument document = new RandomDocuments(7).next();

        ShortlistId first = importing.importInto(document, "Rowan");
        ShortlistId second = importing.importInto(document, "Rowan");

        assertThat(first.value()).isEqualTo(document.shortlist().id());
        assertThat(second).isNotEqualTo(first);
        assertThat(ShortlistDocument.of(facts(first), book::notes)).isEqualTo(document);
        assertThat(facts(second).candidates()).hasSameSizeAs(document.candidates());
        assertThat(editing.facts(first)).contains(facts(first));
    }

    /** Version 1 knew no notes of visits. */
    @Test
    void readsFilesOfTheFirstVersion() {
        String first = Documented.example().replace("\"formatVersion\": 2", "\"formatVersion\": 1");
        assertThat(first).contains("\"formatVersion\": 1").doesNotContain("visit");

        assertThat(reading.read(first)).isInstanceOfSatisfying(ImportResult.Ready.class, ready -> assertThat(
                        ready.document().candidates())
                .allSatisfy(boat -> assertThat(boat.visit()).isEqualTo(VisitNotes.none())));
    }

    @ParameterizedTest
    @ValueSource(strings = {"yesterday", "2026-04-01", "1969-12-31T23:59:59Z", "2200-01-01T00:00:00Z"})
    void refusesVisitsAtNoMomentThatCanBe(String moment) {
        String text = Documented.example()
                .replace(
                        "\"liking\": { \"0b0e8b54-5d0c-4f0e-8a55-3f6b8a4f1c02\": 7 }\n      }",
                        "\"liking\": {} }, \"visit\": { \"startedAt\": \"" + moment + "\" }");

        assertThat(reading.read(text)).isInstanceOfSatisfying(ImportResult.Refused.class, refused -> assertThat(
                        refused.problems().getFirst().sentence())
                .contains("is not a moment"));
    }

    @Test
    void storesNothingOfABrokenFile() throws IOException {
        List<?> before = editing.shortlists();

        try (Stream<Path> files = Files.list(Path.of("src/test/resources/exchange/bad"))) {
            for (Path file : files.toList()) {
                if (reading.read(Files.readAllBytes(file)) instanceof ImportResult.Ready ready) {
                    importing.importInto(ready.document(), "Rowan");
                }
            }
        }

        assertThat(editing.shortlists()).isEqualTo(before);
    }

    @Test
    void storesNothingWhenStoringFailsHalfway() {
        ShortlistDocument document = ((ImportResult.Ready) reading.read(Documented.example())).document();
        UUID twice = UUID.fromString("0b0e8b54-5d0c-4f0e-8a55-3f6b8a4f1d01");
        ShortlistDocument broken = new ShortlistDocument(
                document.format(),
                document.formatVersion(),
                new ShortlistDocument.ShortlistPart(
                        twice,
                        document.shortlist()
                                .data()
                                .withTrip(document.shortlist().data().trip())),
                document.people(),
                List.of(new ShortlistDocument.CandidatePart(UUID.randomUUID(), null, VisitNotes.none())));

        assertThatThrownBy(() -> importing.importInto(broken, "Rowan")).isInstanceOf(NullPointerException.class);
        assertThat(editing.known(twice)).isFalse();
    }

    private Facts facts(ShortlistId id) {
        return editing.facts(id).orElseThrow();
    }
}
