package org.keelweigh.fit;

import java.util.Locale;
import java.util.Optional;
import org.keelweigh.boat.Coded;
import org.keelweigh.catalogue.Row;
import org.keelweigh.quantity.FigureWriter;

/**
 * One measure of fit and the points it earns.
 *
 * @param id its short name
 * @param label what it measures, in plain words
 * @param unit unit of the measure
 * @param points points by measure
 * @param dealBreak beyond this the boat is out unless a person says why not
 * @param countsIn where its points count
 * @param needed what has to be known to tell it, as a sentence
 * @param source where the figures come from
 */
public record FitRow(
        String id,
        String label,
        String unit,
        StraightLines points,
        Optional<DealBreak> dealBreak,
        CountsIn countsIn,
        String needed,
        String source) {

    private static final double MM_PER_M = 1000;

    /** Where a row's points count. */
    public enum CountsIn implements Coded {
        /** In the person's fit. */
        PERSON("person"),
        /** In the room at home and on the car. */
        PLACE("place"),
        /** By itself: as a criterion or as a figure shown. */
        OWN("own");

        private final String code;

        CountsIn(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    /**
     * A bound that a boat must not pass.
     *
     * @param above whether measures above the bound break the deal; otherwise those below
     * @param bound the bound, in the row's unit
     */
    public record DealBreak(boolean above, double bound) {

        /** Tells whether a measure passes the bound. */
        public boolean broken(double measure) {
            return above ? measure > bound : measure < bound;
        }

        static DealBreak parse(String text) {
            char sign = text.charAt(0);
            if (sign != '<' && sign != '>') {
                throw new IllegalArgumentException("\"" + text + "\" must begin with < or >");
            }
            try {
                return new DealBreak(sign == '>', Double.parseDouble(text.substring(1)));
            } catch (NumberFormatException e) {
                throw new IllegalArgumentException("\"" + text + "\" is not a bound such as >0.9", e);
            }
        }
    }

    /** Writes a measure of this row with its unit. */
    public String write(double measure, FigureWriter in) {
        return switch (unit) {
            case "mm" -> in.small(measure / MM_PER_M);
            case "m" -> in.length(measure);
            case "kg" -> in.mass(measure);
            case "share", "ratio" -> in.percent(measure);
            case "level" -> "level " + Math.round(measure) + " of 3";
            default -> Math.round(measure) + " " + unit;
        };
    }

    /** Tells in a sentence that a measure passes the row's bound. */
    String broken(DealBreak bound, double measure, FigureWriter in) {
        return label.substring(0, 1).toUpperCase(Locale.ROOT) + label.substring(1) + ": " + write(measure, in) + ", "
                + (bound.above() ? "above" : "below") + " the bound of " + write(bound.bound(), in) + ".";
    }

    static FitRow of(Row row) {
        return new FitRow(
                row.text("row"),
                row.text("label"),
                row.text("unit"),
                StraightLines.parse(row.text("points")),
                row.optional("deal_break").map(DealBreak::parse),
                Coded.parse(CountsIn.class, row.text("counts_in")),
                row.text("needed"),
                row.text("source"));
    }
}
