package org.keelweigh.appraisal;

import java.nio.file.Path;
import java.util.Optional;
import org.keelweigh.catalogue.Catalogue;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Reads the catalogues at the start, so that a table that is wrong stops the start and names its line. */
@Configuration
class AppraisalConfiguration {

    @Bean
    Catalogue catalogue(@Value("${keelweigh.catalogue-folder:}") String shopFolder) {
        return shopFolder.isBlank() ? Catalogue.shipped() : Catalogue.withShopFolder(Path.of(shopFolder));
    }

    @Bean
    Appraiser appraiser(Catalogue catalogue) {
        return new Appraiser(Catalogues.read(catalogue));
    }

    @Bean
    CatalogueOrigin catalogueOrigin(Catalogue catalogue, @Value("${keelweigh.catalogue-folder:}") String shopFolder) {
        return new CatalogueOrigin(
                Optional.of(shopFolder).filter(folder -> !folder.isBlank()), CatalogueSource.all(catalogue));
    }
}
