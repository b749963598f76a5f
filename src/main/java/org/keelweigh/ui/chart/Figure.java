package org.keelweigh.ui.chart;

/**
 * A number to draw, and how it reads.
 *
 * @param value the number, in the unit of its axis
 * @param label the number with its unit, in the reader's own units and currency
 */
public record Figure(double value, String label) {

    public Figure {
        Require.finite(value, "the value of \"" + label + "\"");
        Require.text(label, "the label of " + value);
    }
}
