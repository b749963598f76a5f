package org.keelweigh.ui.format;

import java.util.function.BiFunction;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.UnitSystem;

/** The quantities people type, each with how it is read and written. Inside, values are SI. */
public enum Quantity {
    MASS(Reading.MASS, Display::mass),
    LENGTH(Reading.LENGTH, Display::length),
    BREADTH(Reading.BREADTH, Display::breadth),
    WAY(Reading.WAY, Display::way),
    TRAVEL(Reading.TRAVEL, Display::way),
    FORCE(Reading.FORCE, Display::force),
    MONEY(Reading.NUMBER, Display::money),
    PERCENT(Reading.PERCENT, Display::percent),
    NUMBER(Reading.NUMBER, (display, value) -> Display.number(value, value == Math.rint(value) ? 0 : 1));

    private final Reading reading;
    private final BiFunction<Display, Double, String> write;

    Quantity(Reading reading, BiFunction<Display, Double, String> write) {
        this.reading = reading;
        this.write = write;
    }

    /** Writes a value in SI units for reading, with its unit. */
    public String write(double value, Display display) {
        return write.apply(display, value);
    }

    /** Writes a value in SI units for editing: exact enough to come back unchanged, without a unit where one is shown beside it. */
    public String edit(double value, Display display) {
        return reading.edit(value, display.units() == UnitSystem.US);
    }

    /**
     * Reads what somebody typed.
     *
     * @throws IllegalArgumentException with a sentence for people, if it cannot be understood
     */
    public double parse(String text, Display display) {
        return reading.parse(text, display.units() == UnitSystem.US);
    }

    /** Tells the unit that a bare number is taken to be in, for the end of the field. */
    public String unit(Display display) {
        return this == MONEY ? display.currency() : reading.unit(display.units() == UnitSystem.US);
    }
}
