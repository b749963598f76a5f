package org.keelweigh.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
                Map.of(),
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
                .contains("would come first if", "TOPSIS", "PROMETHEE II", "Central weights")
                .contains("How often each boat takes each place", "How often the boat of the line is better")
                .contains("Hidden causes, the chance of each now and before anything was seen:")
                .contains("(P10), in half under", "One visit of")
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
    @ValueSource(strings = {"couple", "solo"})
    void staysWithinAHundredColumns(String name) {
        run("demo-data/" + name + ".json");

        assertThat(printed().lines()).allSatisfy(line -> assertThat(line.codePointCount(0, line.length()))
                .isLessThanOrEqualTo(100));
    }

    @Test
    void readsOptionsBesideTheFileInAnyOrderAndForm() {
        assertThat(run("demo-data/solo.json", "--format", "json")).isZero();
        String after = printed();
        assertThat(run("--format=json", "--", "demo-data/solo.json")).isZero();

        assertThat(printed()).isEqualTo(after).startsWith("{");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "-h", "demo-data/solo.json --help"})
    void tellsHowItIsUsed(String arguments) {
        assertThat(run(arguments.split(" "))).isZero();
        assertThat(printed())
                .contains("Usage: bin/appraise", "--format", "--catalogue", "Exit code")
                .doesNotContain("Deal-breaker");
        assertThat(complaint()).isEmpty();
    }

    @Test
    void readsNoMoreThanAShortlistCanHave() {
        assumeTrue(Files.exists(Path.of("/dev/zero")));

        assertThat(run("/dev/zero")).isEqualTo(2);
        assertThat(complaint()).contains("/dev/zero has more than 5 MB").hasLineCount(1);
        assertThat(run("/dev/null")).isEqualTo(2);
        assertThat(complaint()).startsWith("/dev/null: ").hasLineCount(1);
    }

    @Test
    void saysThatAFileCannotBeRead() throws IOException {
        Path locked = Files.writeString(folder.resolve("locked.json"), Documented.example());
        assumeTrue(locked.toFile().setReadable(false));
        assumeFalse(Files.isReadable(locked), "somebody who may read everything runs this test");

        assertThat(run(locked.toString())).isEqualTo(2);
        assertThat(complaint()).contains("may not be read").hasLineCount(1);
    }

    /** Linux lets a process open its own memory, but reading it from the beginning fails. */
    @Test
    void saysThatReadingFailed() {
        assumeTrue(Files.exists(Path.of("/proc/self/mem")));

        assertThat(run("/proc/self/mem")).isEqualTo(2);
        assertThat(complaint())
                .contains("The file /proc/self/mem cannot be read: ")
                .hasLineCount(1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    ''                              | No shortlist file was named.
                    --format                        | After --format belongs text or json.
                    --format=                       | After --format belongs text or json.
                    --format json                   | No shortlist file was named.
                    --format xml demo-data/solo.json | The format must be text or json, not "xml".
                    --catalogue                     | After --catalogue belongs the name of a folder.
                    --verbose demo-data/solo.json   | There is no option --verbose, only --format, --catalogue and --help.
                    -x                              | There is no option -x
                    a b                             | One file at a time: 2 were named, a and b.
                    a b c                           | One file at a time: 3 were named, a and b among them.
                    demo-data                       | demo-data is a folder; name a file in it.
                    /tmp                            | /tmp is a folder; name a file in it.
                    -- --help-me                    | There is no file --help-me.
                    """)
    void saysWhatIsWrongWithOtherArguments(String arguments, String sentence) {
        assertThat(run(arguments.isEmpty() ? new String[0] : arguments.split(" ")))
                .isEqualTo(2);
        assertThat(complaint()).startsWith(sentence).hasLineCount(1);
        assertThat(printed()).isEmpty();
    }
}
