package org.keelweigh.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.keelweigh.exchange.ImportResult;
import org.keelweigh.exchange.ImportService;
import org.keelweigh.exchange.ShortlistExport;
import org.keelweigh.exchange.ShortlistImport;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.shortlist.VisitNotes;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;

@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:examples")
class ExamplesTests {

    @Autowired
    Examples examples;

    @Autowired
    ShortlistEditing editing;

    @Autowired
    ShortlistImport reading;

    @Autowired
    ImportService importing;

    @ParameterizedTest
    @EnumSource
    void readsEachExampleWithoutAQuestion(Example example) throws IOException {
        byte[] file = Files.readAllBytes(Path.of("demo-data", example.name().toLowerCase() + ".json"));

        assertThat(reading.read(file))
                .isInstanceOfSatisfying(ImportResult.Ready.class, ready -> assertThat(ready.questions())
                        .isEmpty());
    }

    @ParameterizedTest
    @EnumSource
    void loadsAFreshCopyEachTime(Example example) {
        Facts first = facts(examples.load(example, "visitor"));
        Facts second = facts(examples.load(example, "visitor"));

        assertThat(second.shortlist().id()).isNotEqualTo(first.shortlist().id());
        assertThat(second.shortlist().data()).isEqualTo(first.shortlist().data());
        assertThat(second.candidates()).hasSameSizeAs(first.candidates()).isNotEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void keepsEachLikingWithItsPerson(Example example) {
        Facts copy = facts(examples.load(example, "visitor"));

        for (Candidate candidate : copy.candidates()) {
            assertThat(candidate.data().liking().keySet())
                    .containsExactlyInAnyOrderElementsOf(copy.people().stream()
                            .map(person -> person.id().toString())
                            .toList());
        }
    }

    @ParameterizedTest
    @EnumSource
    void comesBackFromTheStoreAsItWentIn(Example example) throws IOException {
        String file = Files.readString(Path.of("demo-data", example.name().toLowerCase() + ".json"));
        ImportResult.Ready ready = (ImportResult.Ready) reading.read(file);

        ShortlistId id = importing.importInto(ready.document(), "visitor");
        String again = ShortlistExport.of(facts(id), boat -> VisitNotes.none());

        assertThat(((ImportResult.Ready) reading.read(again)).document()).isEqualTo(ready.document());
    }

    private Facts facts(ShortlistId id) {
        return editing.facts(id).orElseThrow();
    }
}
