package org.keelweigh.ui.chart;

import java.util.List;

/**
 * The numbers of a chart in rows and columns.
 *
 * @param caption what the table holds
 * @param columns a heading for each column, the column of row headings included
 * @param rows cells as they read, with their unit; the first cell of a row is its heading
 */
public record NumbersTable(String caption, List<String> columns, List<List<String>> rows) {

    /** Stands in a cell that has no number. */
    static final String NONE = "–";

    public NumbersTable {
        Require.text(caption, "caption");
        columns = List.copyOf(Require.notEmpty(columns, "columns"));
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            Require.check(
                    row,
                    row.size() == columns.size(),
                    "a row must have " + columns.size() + " cells, had " + row.size() + ": " + row);
        }
    }
}
