package org.keelweigh.ui.chart;

/** Twenty equally likely costs of each boat, as dots. */
public class CostDots extends BoatChart<CostDotsData> {

    public CostDots(String title) {
        super("kw-cost-dots", title);
    }
}
