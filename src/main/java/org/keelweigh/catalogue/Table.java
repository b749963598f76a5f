package org.keelweigh.catalogue;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A catalogue table: comma-separated text with a heading line; lines that begin with {@code #} are comments.
 *
 * @param file the file's name, for complaints
 * @param columns the headings in order
 * @param rows the rows in order
 */
public record Table(String file, List<String> columns, List<Row> rows) {

    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setCommentMarker('#')
            .setIgnoreEmptyLines(true)
            .setTrim(true)
            .get();

    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * Reads a table.
     *
     * @param file the name to use in complaints
     * @param text the text; it is read to its end and not closed
     * @throws CatalogueException if the text is not comma-separated with one heading for each column
     * @throws IOException if reading fails
     */
    public static Table read(String file, Reader text) throws IOException {
        CSVParser parser;
        try {
            parser = CSVParser.builder().setReader(text).setFormat(FORMAT).get();
        } catch (IllegalArgumentException e) {
            throw new CatalogueException(file, 1, "the heading line is unusable: " + e.getMessage());
        }
        List<String> columns = parser.getHeaderNames();
        List<Row> rows = new ArrayList<>();
        try {
            for (CSVRecord each : parser) {
                rows.add(row(file, columns, parser, each));
            }
        } catch (IllegalStateException | java.io.UncheckedIOException e) {
            throw new CatalogueException(
                    file, parser.getCurrentLineNumber(), "this is not a comma-separated line: " + e.getMessage());
        }
        return new Table(file, columns, rows);
    }

    private static Row row(String file, List<String> columns, CSVParser parser, CSVRecord each) {
        long line = parser.getCurrentLineNumber();
        if (each.size() != columns.size()) {
            throw new CatalogueException(
                    file, line, "there are " + each.size() + " cells, but " + columns.size() + " headings");
        }
        return new Row(file, line, each.toMap());
    }

    /**
     * Turns each row into something, wrapping what it complains of with file and line.
     *
     * @param make reads one row; an {@link IllegalArgumentException} from it becomes a {@link CatalogueException}
     */
    public <T> List<T> map(Function<Row, T> make) {
        List<T> made = new ArrayList<>(rows.size());
        for (Row row : rows) {
            try {
                made.add(make.apply(row));
            } catch (CatalogueException e) {
                throw e;
            } catch (IllegalArgumentException e) {
                throw row.complaint(String.valueOf(e.getMessage()));
            }
        }
        return List.copyOf(made);
    }

    /**
     * Refuses two rows with the same value in {@code column}.
     *
     * @throws CatalogueException at the second of them
     */
    public Table unique(String column) {
        Set<String> seen = new HashSet<>();
        for (Row row : rows) {
            if (!seen.add(row.text(column))) {
                throw row.complaint("the " + column + " \"" + row.text(column) + "\" stands in an earlier line too");
            }
        }
        return this;
    }
}
