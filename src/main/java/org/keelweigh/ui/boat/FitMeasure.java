package org.keelweigh.ui.boat;

import org.keelweigh.shortlist.Display;

/** Writes the measure of a row of fit by the unit that the catalogue names. */
final class FitMeasure {

    private static final double MM_PER_M = 1000;

    private FitMeasure() {}

    static String write(String unit, double measure, Display display) {
        return switch (unit) {
            case "mm" -> display.small(measure / MM_PER_M);
            case "m" -> display.length(measure);
            case "kg" -> display.mass(measure);
            case "share" -> display.percent(measure);
            case "ratio" -> Display.number(measure, 2) + " times";
            case "level" -> "level " + Display.number(measure, 0) + " of 3";
            case "points" -> Display.number(measure, 0) + " points";
            default -> Display.number(measure, 0) + " " + unit;
        };
    }
}
