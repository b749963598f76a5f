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
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A shop's own tables, from the command line to the printed five-year cost. */
class OwnCatalogueTests {

    private static final String FILE = "demo-data/solo.json";
    private static final String VARIABLE = "KEELWEIGH_CATALOGUE_FOLDER";

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    Path folder;

    private int run(Map<String, String> environment, String... arguments) {
        out.reset();
        err.reset();
        return AppraiseCommand.run(
                arguments,
                environment,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    private static List<Double> costs(String printed) {
        JsonNode root = new JsonMapper().readTree(printed);
        return root.get("boats")
                .valueStream()
                .map(boat -> boat.at("/cost/presentValue").asDouble())
                .toList();
    }

    private List<Double> costs(Map<String, String> environment, String... arguments) {
        assertThat(run(environment, arguments)).isZero();
        return costs(out.toString(StandardCharsets.UTF_8));
    }

    private static void assertDearer(List<Double> own, List<Double> shipped) {
        assertThat(own).hasSameSizeAs(shipped).isNotEmpty();
        for (int b = 0; b < own.size(); b++) {
            assertThat(own.get(b) - shipped.get(b)).isCloseTo(OwnPriceBook.DEARER, within(1e-3));
        }
    }

    @Test
    void changesTheCostByAnOwnPriceBook() {
        List<Double> shipped = costs(Map.of(), "--format", "json", FILE);
        OwnPriceBook.in(folder);

        assertDearer(costs(Map.of(), "--format", "json", "--catalogue", folder.toString(), FILE), shipped);
        assertDearer(costs(Map.of(VARIABLE, folder.toString()), "--format", "json", FILE), shipped);
    }

    @Test
    void takesTheOptionBeforeTheEnvironment(@TempDir Path empty) {
        OwnPriceBook.in(folder);

        List<Double> costs =
                costs(Map.of(VARIABLE, folder.toString()), "--catalogue=" + empty, "--format", "json", FILE);

        assertThat(costs).isEqualTo(costs(Map.of(VARIABLE, ""), "--format", "json", FILE));
    }

    /** In a process of its own, as bin/appraise starts it. */
    @Test
    void readsTheFolderFromTheEnvironmentOfTheProcess() throws IOException, InterruptedException {
        OwnPriceBook.in(folder);
        ProcessBuilder process = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                AppraiseCommand.class.getName(),
                "--format",
                "json",
                FILE);
        process.environment().put(VARIABLE, folder.toString());
        process.redirectError(folder.resolve("err").toFile());
        Process started = process.start();
        String printed = new String(started.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(started.waitFor()).isZero();
        assertDearer(costs(printed), costs(Map.of(), "--format", "json", FILE));
    }

    @Test
    void namesFileAndLineOfABadTable() throws IOException {
        String broken = OwnPriceBook.shipped().replace("outing,,,,,0,5,20,", "outing,,,,,0,five,20,");
        Files.writeString(folder.resolve("price-book.csv"), broken);
        long line = 1 + broken.substring(0, broken.indexOf("five")).lines().count() - 1;

        assertThat(run(Map.of(), "--catalogue", folder.toString(), FILE)).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .startsWith("The catalogue in " + folder + " cannot be used: price-book.csv, line " + line + ": ")
                .contains("five")
                .hasLineCount(1);
        assertThat(out.size()).isZero();
    }

    @Test
    void saysThatATableIsNoText() throws IOException {
        Files.write(folder.resolve("price-book.csv"), new byte[] {'i', 'd', (byte) 0xff, '\n'});

        assertThat(run(Map.of(), "--catalogue", folder.toString(), FILE)).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("price-book.csv")
                .hasLineCount(1);
    }

    @Test
    void refusesAFolderThatIsNone() {
        assertThat(run(Map.of(VARIABLE, "/nowhere/at/all"), FILE)).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .isEqualToIgnoringNewLines("There is no catalogue folder /nowhere/at/all.");

        assertThat(run(Map.of(), "--catalogue", FILE, FILE)).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("is a file; name the folder")
                .hasLineCount(1);
    }
}
