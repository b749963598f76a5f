package org.keelweigh.catalogue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One line of a catalogue table. Every reading method complains with file and line.
 *
 * @param file the table's file name
 * @param line the line number in the file, from 1
 * @param cells the cells by heading
 */
public record Row(String file, long line, Map<String, String> cells) {

    public Row {
        cells = Map.copyOf(cells);
    }

    /**
     * Reads a cell that must not be empty.
     *
     * @throws CatalogueException if the column is missing or the cell empty
     */
    public String text(String column) {
        return optional(column).orElseThrow(() -> complaint("the column " + column + " is empty and needs a value"));
    }

    /**
     * Reads a cell that may be empty.
     *
     * @throws CatalogueException if the column is missing
     */
    public Optional<String> optional(String column) {
        String cell = cells.get(column);
        if (cell == null) {
            throw complaint("the table has no column " + column);
        }
        return cell.isEmpty() ? Optional.empty() : Optional.of(cell);
    }

    /**
     * Reads a number.
     *
     * @param least the least that makes sense
     * @param most the most that makes sense
     * @throws CatalogueException if the cell holds no number or one outside the bounds
     */
    public double number(String column, double least, double most) {
        double value = parse(column, text(column));
        if (!(value >= least && value <= most)) {
            throw complaint(
                    "the column " + column + " holds " + value + ", which is not between " + least + " and " + most);
        }
        return value;
    }

    /** Reads a number that may be absent; see {@link #number(String, double, double)}. */
    public Optional<Double> optionalNumber(String column, double least, double most) {
        return optional(column).map(cell -> number(column, least, most));
    }

    /** Reads a list of words separated by blanks; an empty cell is an empty list. */
    public List<String> words(String column) {
        return optional(column).map(cell -> Arrays.asList(cell.split("\\s+"))).orElse(List.of());
    }

    /** Makes a complaint about this line. */
    public CatalogueException complaint(String what) {
        return new CatalogueException(file, line, what);
    }

    private double parse(String column, String cell) {
        try {
            return Double.parseDouble(cell);
        } catch (NumberFormatException e) {
            throw complaint("the column " + column + " holds \"" + cell + "\", which is not a number");
        }
    }
}
