package org.keelweigh.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.keelweigh.catalogue.Catalogue;

/** Holds the import to what it must say about files that are broken, each in one way. */
class BadInputTests {

    private static final Path FOLDER = Path.of("src/test/resources/exchange/bad");

    private final ShortlistImport reading = new ShortlistImport(Catalogue.shipped(), 2026);

    @ParameterizedTest
    @CsvFileSource(resources = "/exchange/bad.csv", useHeadersInDisplayName = true)
    void namesFieldAndLineOfTrouble(String file, String field, int line, String sentence) throws IOException {
        ImportResult result = reading.read(Files.readAllBytes(FOLDER.resolve(file + ".json")));

        assertThat(result).isInstanceOf(ImportResult.Refused.class);
        ImportProblem first = ((ImportResult.Refused) result).problems().getFirst();
        assertThat(first.sentence()).contains(sentence);
        assertThat(first.field()).isEqualTo(field == null ? "" : field);
        assertThat(first.line()).isEqualTo(line);
    }

    @Test
    void listsEveryBrokenFile() throws IOException {
        List<String> listed = Files.readAllLines(FOLDER.resolveSibling("bad.csv")).stream()
                .skip(2)
                .map(line -> line.substring(0, line.indexOf(',')) + ".json")
                .toList();

        try (Stream<Path> files = Files.list(FOLDER)) {
            assertThat(files.map(each -> each.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(listed)
                    .hasSizeGreaterThan(35);
        }
    }

    @Test
    void refusesMoreThanFiveMegabytes() {
        byte[] great = new byte[Utf8Text.MOST_BYTES + 1];
        Arrays.fill(great, (byte) ' ');

        assertThat(reading.read(great)).isInstanceOfSatisfying(ImportResult.Refused.class, refused -> assertThat(
                        refused.problems().getFirst().sentence())
                .contains("more than 5 MB"));
    }

    @Test
    void namesAllProblemsOfAFileByLine() {
        String text = Documented.example().replace("4.9", "\"long\"").replace("\"metric\"", "\"metre\"");

        ImportResult.Refused refused = (ImportResult.Refused) reading.read(text);

        assertThat(refused.problems().stream().map(ImportProblem::field))
                .containsExactly("shortlist.data.units", "candidates[0].data.boat.lengthM");
    }

    @Test
    void readsAFileWithAByteOrderMark() {
        assertThat(reading.read("\uFEFF" + Documented.example())).isInstanceOf(ImportResult.Ready.class);
    }

    @Test
    void asksAboutNamesThatNoCatalogueHasAndKeepsThem() {
        String text =
                Documented.example().replace("hull-scratch", "hull-scrach").replace("\"paddle\"", "\"piano\"");

        ImportResult.Ready ready = (ImportResult.Ready) reading.read(text);

        assertThat(ready.questions().stream().map(doubt -> doubt.sentence()).collect(Collectors.joining("\n")))
                .contains("Did you mean \"hull-scratch\"?")
                .contains("piece of gear named \"piano\"");
        assertThat(ready.document()
                        .candidates()
                        .getFirst()
                        .data()
                        .findings()
                        .getFirst()
                        .check())
                .isEqualTo("hull-scrach");
    }

    @Test
    void readsTheExampleOfTheDocumentation() {
        assertThat(reading.read(Documented.example()))
                .isInstanceOfSatisfying(ImportResult.Ready.class, ready -> assertThat(ready.questions())
                        .isEmpty());
    }
}
