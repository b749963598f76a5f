package org.keelweigh.ui.chart;

/** What a chart draws, ready to draw: it arrives in the browser as it stands and reads as a table without one. */
public interface ChartData {

    /** Says in one sentence what the drawing shows; it is what a screen reader says for the picture. */
    String summary();

    /** Returns every number of the drawing. */
    NumbersTable table();
}
