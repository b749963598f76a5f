package org.keelweigh.appraisal;

import java.util.List;
import java.util.regex.Pattern;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.catalogue.Row;
import org.keelweigh.catalogue.Table;

/**
 * Where the lines of a catalogue table come from, as the table itself says.
 *
 * @param file the table's file name
 * @param lines how many lines it has
 * @param estimates how many of them say that they are estimates
 * @param sources the other sources it names, in their order
 */
public record CatalogueSource(String file, int lines, int estimates, List<String> sources) {

    private static final String COLUMN = "source";
    private static final String ESTIMATE = "estimate";
    private static final Pattern AFTER_ESTIMATE = Pattern.compile("^" + ESTIMATE + "(;\\s*)?");
    private static final List<String> TABLES = List.of(
            "boat-defaults.csv",
            "drive-defaults.csv",
            "checks.csv",
            "grades.csv",
            "causes.csv",
            "effects.csv",
            "signals.csv",
            "listing-signals.csv",
            "listing-base-rates.csv",
            "price-book.csv",
            "retention.csv",
            "negotiation.csv",
            "carts.csv",
            "surfaces.csv",
            "lift-limits.csv",
            "fit-rows.csv",
            "needed-beam.csv",
            "water-match.csv",
            "criteria.csv",
            "weight-sets.csv");

    public CatalogueSource {
        sources = List.copyOf(sources);
    }

    /** Reads the sources of every table that names them line by line. */
    public static List<CatalogueSource> all(Catalogue catalogue) {
        return TABLES.stream()
                .map(catalogue::table)
                .filter(table -> table.columns().contains(COLUMN))
                .map(CatalogueSource::of)
                .toList();
    }

    private static CatalogueSource of(Table table) {
        List<String> named = table.rows().stream()
                .map(CatalogueSource::source)
                .filter(each -> !each.isEmpty())
                .toList();
        int estimates =
                (int) named.stream().filter(each -> each.startsWith(ESTIMATE)).count();
        List<String> others = named.stream()
                .map(each ->
                        each.startsWith(ESTIMATE) ? AFTER_ESTIMATE.matcher(each).replaceFirst("") : each)
                .filter(each -> !each.isEmpty())
                .distinct()
                .toList();
        return new CatalogueSource(table.file(), table.rows().size(), estimates, others);
    }

    private static String source(Row row) {
        return row.optional(COLUMN).orElse("");
    }
}
