package org.keelweigh.appraisal;

import java.util.List;
import java.util.Optional;

/**
 * Which catalogues are in use and where their lines come from.
 *
 * @param shopFolder the folder whose tables replace shipped ones; empty when only shipped ones are in use
 * @param tables the tables that name a source line by line
 */
public record CatalogueOrigin(Optional<String> shopFolder, List<CatalogueSource> tables) {

    public CatalogueOrigin {
        tables = List.copyOf(tables);
    }
}
