package org.keelweigh.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.keelweigh.appraisal.Catalogues;
import org.keelweigh.catalogue.Catalogue;

/** Every sentence of the printed answer speaks in the units that the shortlist chose. */
class UnitsOfSentencesTests {

    private static final Pattern US = Pattern.compile("\\d ?(?:lb|lbf|ft|in(?! \\d)|mph|miles?|mi)\\b");
    private static final Pattern METRIC = Pattern.compile("\\d ?(?:kg|N|cm|mm|m|km|km/h)\\b");
    /** What a graded fault looks like is an instruction of the catalogue and stays as written there. */
    private static final List<String> INSTRUCTIONS = Catalogues.read(Catalogue.shipped()).inspection().checks().stream()
            .flatMap(check -> check.grades().stream())
            .map(grade -> grade.looksLike())
            .filter(text -> METRIC.matcher(text).find())
            .toList();

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"couple, text", "couple, json", "solo, text", "solo, json"})
    void speaksMetricToMetricReaders(String example, String format) throws IOException {
        String answer = answer(example, "metric", format);

        assertThat(answer).containsPattern(METRIC).doesNotContainPattern(US);
    }

    @ParameterizedTest
    @CsvSource({"couple, text", "couple, json", "solo, text", "solo, json"})
    void speaksUsToUsReaders(String example, String format) throws IOException {
        String answer = answer(example, "us", format);
        for (String instruction : INSTRUCTIONS) {
            answer = answer.replace(instruction, "");
        }

        assertThat(answer).containsPattern(US).doesNotContainPattern(METRIC);
    }

    private String answer(String example, String units, String format) throws IOException {
        String written = Files.readString(Path.of("demo-data", example + ".json"));
        Path file = Files.writeString(
                folder.resolve(example + ".json"),
                written.replace("\"units\": \"metric\"", "\"units\": \"" + units + "\""));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int exit = AppraiseCommand.run(
                new String[] {"--format", format, file.toString()},
                Map.of(),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8));

        assertThat(exit).isZero();
        return out.toString(StandardCharsets.UTF_8).replaceAll("\\s+", " ");
    }
}
