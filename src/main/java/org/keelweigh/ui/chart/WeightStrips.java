package org.keelweigh.ui.chart;

/** For each criterion, who would lead at every weight it could be given. */
public class WeightStrips extends Chart<WeightStripsData> {

    public WeightStrips(String title) {
        super("kw-weight-strips", title);
    }
}
