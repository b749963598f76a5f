package org.keelweigh.appraisal;

import java.nio.file.Path;
import org.keelweigh.catalogue.Catalogue;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Reads the catalogues at the start, so that a table that is wrong stops the start and names its line. */
@Configuration
class AppraisalConfiguration {

    @Bean
    Appraiser appraiser(@Value("${keelweigh.catalogue-folder:}") String shopFolder) {
        Catalogue source = shopFolder.isBlank() ? Catalogue.shipped() : Catalogue.withShopFolder(Path.of(shopFolder));
        return new Appraiser(Catalogues.read(source));
    }
}
