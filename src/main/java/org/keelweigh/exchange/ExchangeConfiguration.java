package org.keelweigh.exchange;

import java.time.Clock;
import java.time.Year;
import org.keelweigh.catalogue.Catalogue;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Prepares the reading of files once, against the catalogues in use. */
@Configuration
class ExchangeConfiguration {

    @Bean
    ShortlistImport shortlistImport(Catalogue catalogue, Clock clock) {
        return new ShortlistImport(catalogue, Year.now(clock).getValue());
    }
}
