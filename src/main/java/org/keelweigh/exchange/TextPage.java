package org.keelweigh.exchange;

import java.util.ArrayList;
import java.util.List;

/** A text for a terminal: lines of at most {@value #WIDTH} columns. */
final class TextPage {

    static final int WIDTH = 96;

    private static final int NAME_WIDTH = 34;
    private static final int CELL_WIDTH = 8;
    private static final int CELLS_ABREAST = (WIDTH - NAME_WIDTH) / CELL_WIDTH;
    private static final int SHORT_UNIT = 4;

    private final List<String> lines = new ArrayList<>();

    /**
     * One row of a table.
     *
     * @param name what the row is about
     * @param cells one for each column
     */
    record Row(String name, List<String> cells) {}

    String text() {
        return String.join("\n", lines) + "\n";
    }

    /** Writes a heading, underlined. */
    void title(String text, char under) {
        blank();
        say(text);
        lines.add(String.valueOf(under).repeat(Math.min(WIDTH, text.codePointCount(0, text.length()))));
    }

    void blank() {
        lines.add("");
    }

    /** Writes a sentence from the left edge. */
    void say(String text) {
        item(0, text);
    }

    /** Writes a sentence with an indent; its further lines stand a little further in. */
    void item(int indent, String text) {
        wrapped(" ".repeat(indent), " ".repeat(indent == 0 ? 0 : indent + 2), text);
    }

    /** Writes a sentence beside something laid out already; its further lines stand under it. */
    void beside(String laidOut, String text) {
        wrapped(laidOut, " ".repeat(columns(laidOut)), text);
    }

    /** Writes a line that is laid out already. */
    void line(String laidOut) {
        lines.add(laidOut);
    }

    /** Writes a table in blocks of as many columns as fit, each block with the names of the rows. */
    void table(List<String> columns, List<Row> rows) {
        for (int from = 0; from < columns.size(); from += CELLS_ABREAST) {
            int start = from;
            int end = Math.min(columns.size(), from + CELLS_ABREAST);
            tableLine("", columns.subList(start, end));
            rows.forEach(each -> tableLine(each.name(), each.cells().subList(start, end)));
        }
    }

    private void tableLine(String name, List<String> cells) {
        StringBuilder line = new StringBuilder(wide("   " + name, NAME_WIDTH));
        cells.forEach(each -> line.append(right(each, CELL_WIDTH)));
        lines.add(line.toString().stripTrailing());
    }

    private void wrapped(String first, String further, String text) {
        StringBuilder line = new StringBuilder(first);
        int begun = first.length();
        for (String word : words(text)) {
            String rest = word;
            if (line.length() > begun && columns(line.toString()) + 1 + columns(rest) > WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder(further);
                begun = further.length();
            }
            if (line.length() > begun) {
                line.append(' ');
            }
            while (columns(line.toString()) + columns(rest) > WIDTH) {
                int fits = rest.offsetByCodePoints(0, WIDTH - columns(line.toString()));
                lines.add(line + rest.substring(0, fits));
                rest = rest.substring(fits);
                line = new StringBuilder(further);
                begun = further.length();
            }
            line.append(rest);
        }
        lines.add(line.toString());
    }

    /** Splits at spaces, but keeps a short unit with its number. */
    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        for (String word : text.strip().split("\\s+")) {
            boolean unit = !words.isEmpty()
                    && Character.isDigit(words.getLast().charAt(words.getLast().length() - 1))
                    && word.length() <= SHORT_UNIT;
            if (unit) {
                words.add(words.removeLast() + " " + word);
            } else {
                words.add(word);
            }
        }
        return words;
    }

    /** Fills up to a width, or cuts off what is longer. */
    static String wide(String text, int width) {
        int columns = columns(text);
        return columns < width
                ? text + " ".repeat(width - columns)
                : text.substring(0, text.offsetByCodePoints(0, width - 2)) + "… ";
    }

    static String right(String text, int width) {
        return " ".repeat(Math.max(0, width - columns(text))) + text;
    }

    private static int columns(String text) {
        return text.codePointCount(0, text.length());
    }
}
