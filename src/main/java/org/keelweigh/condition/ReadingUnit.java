package org.keelweigh.condition;

import org.keelweigh.boat.Coded;

/** The unit of what is measured at a check: that of the words which tell its results apart. */
public enum ReadingUnit implements Coded {
    MILLIMETRE("mm", " mm"),
    CENTIMETRE("cm", " cm"),
    MILLILITRE("ml", " ml"),
    KILOGRAM("kg", " kg"),
    DEGREE("deg", "°"),
    PERCENT("pct", " %"),
    YEAR("years", " years"),
    COUNT("count", "");

    private final String code;
    private final String ending;

    ReadingUnit(String code, String ending) {
        this.code = code;
        this.ending = ending;
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells what a field for the reading is called, such as "Measured, mm". */
    public String label() {
        return switch (this) {
            case COUNT -> "Counted";
            case DEGREE -> "Measured, degrees";
            default -> "Measured, " + ending.strip();
        };
    }

    /** Tells a reading in words, such as "measured 6 mm" or "counted 3"; {@code number} is written already. */
    public String told(String number) {
        return this == COUNT ? "counted " + number : "measured " + number + ending;
    }
}
