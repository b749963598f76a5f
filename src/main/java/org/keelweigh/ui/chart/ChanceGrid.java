package org.keelweigh.ui.chart;

/** Chances as one hundred cells, side by side before and after a check. */
public class ChanceGrid extends Chart<ChanceGridData> {

    public ChanceGrid(String title) {
        super("kw-chance-grid", title);
    }
}
