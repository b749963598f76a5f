package org.keelweigh.quantity;

/**
 * Writes figures for the sentences that people read, with the unit beside the number. The rooms that compute hand SI values to
 * it and do not know which units people chose; a sentence that names no unit of its own suits every reader.
 */
public interface FigureWriter {

    /** Writes a mass given in kilograms. */
    String mass(double kg);

    /** Writes the length of a boat, a car or a room given in metres. */
    String length(double m);

    /** Writes a small length, such as a margin or a step, given in metres. */
    String small(double m);

    /** Writes a way to go given in metres. */
    String way(double m);

    /** Writes a force given in newtons. */
    String force(double newtons);

    /** Writes a speed given in metres per second. */
    String speed(double mPerS);

    /** Writes a share of one as percent. */
    String percent(double share);

    /** Writes how many times one figure is of another, to the hundredth. */
    String ratio(double times);
}
