package org.keelweigh.fit;

import java.util.Optional;
import org.keelweigh.quantity.FigureWriter;

/** One row of fit for one boat, and where it is about a person, for that person. */
public sealed interface FitScore permits FitScore.Scored, FitScore.Unknown {

    /** Tells the row. */
    FitRow row();

    /**
     * A row that could be told.
     *
     * @param row the row
     * @param measure the measure, in the row's unit
     * @param points 0 to 100
     * @param assumed whether an assumed figure went into it
     * @param dealBreaker why the boat is out, as a sentence; empty when it is not
     * @param note how the measure came about, as a sentence; may be empty
     */
    record Scored(FitRow row, double measure, double points, boolean assumed, Optional<String> dealBreaker, String note)
            implements FitScore {}

    /**
     * A row that could not be told.
     *
     * @param row the row
     * @param needed what has to be known, as a sentence
     */
    record Unknown(FitRow row, String needed) implements FitScore {}

    /**
     * Scores a measure.
     *
     * @param breaks whether the row's bound counts here: a figure that is only assumed never rules a boat out
     * @param note how the measure came about, as a sentence; may be empty
     * @param in writes the figures of the reason
     */
    static FitScore scored(FitRow row, double measure, boolean assumed, boolean breaks, String note, FigureWriter in) {
        Optional<String> breaker = row.dealBreak()
                .filter(bound -> breaks && bound.broken(measure))
                .map(bound -> row.broken(bound, measure, in));
        return new Scored(row, measure, row.points().at(measure), assumed, breaker, note);
    }
}
