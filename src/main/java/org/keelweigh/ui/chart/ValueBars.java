package org.keelweigh.ui.chart;

/** A bar per boat whose pieces, one per family of criteria, add up to its value. */
public class ValueBars extends BoatChart<ValueBarsData> {

    public ValueBars(String title) {
        super("kw-value-bars", title);
    }
}
