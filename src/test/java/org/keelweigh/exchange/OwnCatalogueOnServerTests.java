package org.keelweigh.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Year;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.keelweigh.appraisal.AppraisalService;
import org.keelweigh.appraisal.Appraiser;
import org.keelweigh.appraisal.CatalogueOrigin;
import org.keelweigh.appraisal.Catalogues;
import org.keelweigh.appraisal.Measured;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.shortlist.Facts;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** A shop's own tables, from the environment to the five-year cost that the server works out. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:own-catalogue")
class OwnCatalogueOnServerTests {

    @TempDir
    static Path folder;

    @Autowired
    AppraisalService appraisal;

    @Autowired
    ShortlistImport reading;

    @Autowired
    CatalogueOrigin origin;

    @DynamicPropertySource
    static void shop(DynamicPropertyRegistry registry) {
        registry.add("KEELWEIGH_CATALOGUE_FOLDER", () -> OwnPriceBook.in(folder).toString());
    }

    @Test
    void changesTheCostByAnOwnPriceBook() throws IOException {
        ImportResult read = reading.read(Files.readAllBytes(Path.of("demo-data/solo.json")));
        Facts facts = ((ImportResult.Ready) read).document().facts();

        Measured own = appraisal.measure(facts);
        Measured shipped = new Appraiser(Catalogues.read(Catalogue.shipped()))
                .measure(facts, Year.now().getValue());

        assertThat(origin.shopFolder()).contains(folder.toString());
        for (int b = 0; b < own.boats().size(); b++) {
            assertThat(own.boats().get(b).cost().presentValue()
                            - shipped.boats().get(b).cost().presentValue())
                    .isCloseTo(OwnPriceBook.DEARER, within(1e-3));
        }
    }
}
