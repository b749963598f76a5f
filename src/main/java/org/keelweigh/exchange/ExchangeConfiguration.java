package org.keelweigh.exchange;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Year;
import org.keelweigh.catalogue.Catalogue;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Prepares the reading of files once, against the catalogues in use. */
@Configuration
class ExchangeConfiguration {

    @Bean
    ShortlistImport shortlistImport(@Value("${keelweigh.catalogue-folder:}") String shopFolder, Clock clock) {
        Catalogue catalogue =
                shopFolder.isBlank() ? Catalogue.shipped() : Catalogue.withShopFolder(Path.of(shopFolder));
        return new ShortlistImport(catalogue, Year.now(clock).getValue());
    }
}
