package org.keelweigh.condition;

import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.catalogue.CatalogueException;

/** Breaks one line of a shop's own table at a time; each complaint names the file and the line. */
class BrokenInspectionCatalogueTests {

    @TempDir
    private Path shopFolder;

    @ParameterizedTest(name = "{0} with {2} instead of {1}: {3}")
    @CsvSource(delimiter = '|', textBlock = """
            checks.csv  | hull-uv,hull-bottom       | hull-uv,bottom             | "bottom" is not one of identity
            checks.csv  | hull-uv,hull-bottom       | hull-uv,identity           | checks stand in the order of their zones
            checks.csv  | hull-uv,hull-bottom       | hull-crack,hull-bottom     | stands in an earlier line too
            checks.csv  | ,0.556,surface            | ,0.656,surface             | have to sum to 1
            checks.csv  | ,0.556,surface            | ,0.556,skin                | "skin" is not one of papers
            checks.csv  | no,no,,Polish             | no,no,inch,Polish          | "inch" is not one of mm
            checks.csv  | dark cloth,3,             | dark cloth,0,              | which is not between 1.0 and 240.0
            checks.csv  | 0.55,0.90,"no powder      | 0.55,1.90,"no powder       | the column person holds 1.9
            checks.csv  | dark cloth,3,,rigid,      | dark cloth,3,,rigids,      | "rigids" is not one of sot
            checks.csv  | dark cloth,3,,rigid,      | dark cloth,3,,,            | the column kinds is empty and needs a value
            grades.csv  | hull-uv,major             | hull-uv,terrible           | "terrible" is not one of fine
            grades.csv  | hull-uv,major             | hull-uv,fine               | A grade is minor, major or stop
            grades.csv  | hull-uv,major             | hull-uv,minor              | run from minor over major to stop
            grades.csv  | hull-uv,major             | hull-vu,major              | there is no check "hull-vu" in checks.csv
            grades.csv  | ,0.104,20,60,150          | ,0.104,20,260,150          | runs from low over likely to high
            grades.csv  | ,0.104,20,60,150          | ,1.104,20,60,150           | the column chance holds 1.104
            grades.csv  | ,0.104,20,60,150          | ,much,20,60,150            | "much", which is not a number
            grades.csv  | 20,60,150,owner,ask       | 20,60,150,owner,perhaps    | "perhaps" is not one of no, ask, yes
            methods.csv | close-photos,photo,1      | close-photos,picture,1     | "picture" is not one of nothing
            methods.csv | close-photos,photo,1      | seller,photo,1             | stands in an earlier line too
            materials.csv | pe3,6,9                 | pe3,9,6                    | which is not between 9.0 and
            materials.csv | pe3,6,9                 | pe4,6,9                    | "pe4" is not one of pe1
            """)
    void complainsWithFileAndLine(String file, String sound, String broken, String complaint) throws IOException {
        List<String> lines = shipped(file);
        int at = lineWith(lines, sound);
        Files.write(
                shopFolder.resolve(file),
                lines.stream().map(line -> line.replace(sound, broken)).toList());
        assertThatExceptionOfType(CatalogueException.class)
                .isThrownBy(() -> InspectionCatalogue.read(Catalogue.withShopFolder(shopFolder)))
                .withMessageContaining(file + ", line " + (at + 1) + ":")
                .withMessageContaining(complaint);
    }

    @ParameterizedTest
    @CsvSource({"methods.csv, repairer", "materials.csv, tube"})
    void complainsOfAMissingLine(String file, String code) throws IOException {
        List<String> kept = shipped(file).stream()
                .filter(line -> !line.startsWith(code + ","))
                .toList();
        Files.write(shopFolder.resolve(file), kept);
        assertThatExceptionOfType(CatalogueException.class)
                .isThrownBy(() -> InspectionCatalogue.read(Catalogue.withShopFolder(shopFolder)))
                .withMessageContaining(file)
                .withMessageContaining("there is no line for " + code);
    }

    @Test
    void complainsOfACheckWithoutGrades() throws IOException {
        List<String> kept = shipped("grades.csv").stream()
                .filter(line -> !line.startsWith("hull-uv,"))
                .toList();
        Files.write(shopFolder.resolve("grades.csv"), kept);
        assertThatExceptionOfType(CatalogueException.class)
                .isThrownBy(() -> InspectionCatalogue.read(Catalogue.withShopFolder(shopFolder)))
                .withMessageMatching("checks.csv, line \\d+: the check hull-uv has no line in grades.csv");
    }

    private static List<String> shipped(String file) throws IOException {
        try (InputStream table = Catalogue.class.getResourceAsStream("/catalogue/" + file)) {
            Assertions.assertThat(table).isNotNull();
            return new String(table.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        }
    }

    private static int lineWith(List<String> lines, String sound) {
        List<String> matching =
                lines.stream().filter(line -> line.contains(sound)).toList();
        Assertions.assertThat(matching).as("lines with " + sound).hasSize(1);
        return lines.indexOf(matching.getFirst());
    }
}
