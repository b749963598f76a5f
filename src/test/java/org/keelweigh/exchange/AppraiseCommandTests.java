package org.keelweigh.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class AppraiseCommandTests {

    private static final JsonMapper JSON = new JsonMapper();

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    Path folder;

    private int run(String... arguments) {
        out.reset();
        err.reset();
        return AppraiseCommand.run(
                arguments,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    private String printed() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String complaint() {
        return err.toString(StandardCharsets.UTF_8);
    }

    private JsonNode json(String name) {
        assertThat(run("--format", "json", "demo-data/" + name + ".json")).isZero();
        return JSON.readTree(printed());
    }

    @Test
    void printsTheWholeAnswerAsText() {
        assertThat(run("demo-data/couple.json")).isZero();

        assertThat(printed())
                .contains("Together", "Wren", "Alder", "Grey fin-drive boat leads.")
                .contains("Deal-breaker, longer than its room: It is 5.03 m long, and its room 4.30 m.")
                .contains("How far each weight can move before another boat leads:")
                .contains("Cost over 5 years in today's money:", "service of the fin drive")
                .contains("From car to water:", "lifting index", "One cart for all of them")
                .doesNotContain("NaN", "null", "Infinity", "Optional");
        assertThat(complaint()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"couple", "solo"})
    void addsContributionsUpToTheValue(String name) {
        for (JsonNode view : json(name).get("perspectives")) {
            for (JsonNode place : view.get("ranking")) {
                double sum = place.get("contributions")
                        .valueStream()
                        .mapToDouble(part -> part.get("contribution").asDouble())
                        .sum();
                assertThat(sum).isCloseTo(place.get("value").asDouble(), within(1e-4));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"couple", "solo"})
    void addsCostLinesUpToTheCost(String name) {
        for (JsonNode boat : json(name).get("boats")) {
            double sum = boat.at("/cost/lines")
                    .valueStream()
                    .mapToDouble(line -> line.get("presentValue").asDouble())
                    .sum();
            assertThat(sum).isCloseTo(boat.at("/cost/presentValue").asDouble(), within(1e-3));
        }
    }

    @Test
    void putsBoatsThatAreRuledOutLast() {
        for (JsonNode view : json("couple").get("perspectives")) {
            List<Boolean> out = view.get("ranking")
                    .valueStream()
                    .map(place -> place.get("ruledOut").asBoolean())
                    .toList();
            assertThat(out).isSorted().contains(true, false);
        }
    }

    @Test
    void printsTheSameAnswerTwice() {
        String once = json("solo").toString();

        assertThat(json("solo").toString()).isEqualTo(once);
    }

    @Test
    void describesEveryFieldInTheDocumentation() throws IOException {
        String text = Files.readString(Path.of("docs/data-format.md"));
        TreeSet<String> names = new TreeSet<>();
        collect(json("couple"), names);
        collect(json("solo"), names);

        assertThat(names).hasSizeGreaterThan(60).allSatisfy(name -> assertThat(text)
                .contains("`" + name + "`"));
    }

    private static void collect(JsonNode node, TreeSet<String> names) {
        names.addAll(node.propertyNames());
        node.forEach(each -> collect(each, names));
    }

    @Test
    void answersForAShortlistWithoutBoats() throws IOException {
        String text = Documented.example();
        String none = text.substring(0, text.indexOf("\"candidates\"")) + "\"candidates\": [] }";
        Path file = Files.writeString(folder.resolve("none.json"), none);

        assertThat(run(file.toString())).isZero();
        assertThat(printed()).contains("There are no boats on this shortlist yet.");
    }

    @Test
    void answersForAShortlistOfWhichHardlyAnythingIsKnown() throws IOException {
        Path file = Files.writeString(folder.resolve("example.json"), Documented.example());

        assertThat(run("--format", "json", file.toString())).isZero();
        assertThat(JSON.readTree(printed()).at("/boats/0/assumptions")).isNotEmpty();
    }

    @Test
    void saysThatAFileIsMissing() {
        assertThat(run(folder.resolve("nothing.json").toString())).isEqualTo(2);

        assertThat(complaint()).contains("There is no file").hasLineCount(1);
        assertThat(printed()).isEmpty();
    }

    @Test
    void namesTheFirstProblemOfARefusedFileAndCountsTheOthers() throws IOException {
        String broken = Documented.example().replace("4.9", "\"long\"").replace("\"metric\"", "\"metre\"");
        Path file = Files.writeString(folder.resolve("broken.json"), broken);

        assertThat(run(file.toString())).isEqualTo(2);
        assertThat(complaint())
                .contains("Line 6, shortlist.data.units", "(and 1 more problem)")
                .hasLineCount(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "--format", "--format json", "--format xml demo-data/solo.json", "--help", "a b", "demo-data"
            })
    void refusesOtherArguments(String arguments) {
        assertThat(run(arguments.isEmpty() ? new String[0] : arguments.split(" ")))
                .isEqualTo(2);
        assertThat(complaint()).hasLineCount(1);
    }
}
