package org.keelweigh.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.keelweigh.catalogue.Catalogue;

class FitCatalogueTests {

    @TempDir
    Path shop;

    @ParameterizedTest
    @CsvSource({
        "fit-rows.csv,0:55 0.30:85,0.30:85 0:55",
        "fit-rows.csv,'>0.90','~0.90'",
        "fit-rows.csv,'draught,water','depth,water'",
        "fit-rows.csv,'>0.90,person','>0.90,nobody'",
        "water-match.csv,'pedal,pedal kayak,pedal','pedal,pedal kayak,sot'",
        "water-match.csv,'90,60,80,75','90,160,80,75'",
        "needed-beam.csv,'fish-seated,fish-seated','fish-seated,stand'",
        "needed-beam.csv,'any,,560','any,,56'"
    })
    void rejectsUnusableTables(String file, String good, String bad) throws IOException {
        try (var shipped = FitCatalogueTests.class.getResourceAsStream("/catalogue/" + file)) {
            String text = new String(shipped.readAllBytes(), StandardCharsets.UTF_8);
            String changed = text.replace(good, bad);
            assertThat(changed).isNotEqualTo(text);
            Files.writeString(shop.resolve(file), changed);
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FitCatalogue.read(Catalogue.withShopFolder(shop)))
                .withMessageContaining(file);
    }
}
