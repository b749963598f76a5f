package org.keelweigh.ui.chart;

/** Each boat by its cost and by what it is worth apart from cost. */
public class CostValue extends BoatChart<CostValueData> {

    public CostValue(String title) {
        super("kw-cost-value", title);
    }
}
