package org.keelweigh.ui.chart;

/** What has been paid by each year, and how far it could stray. */
public class CostFan extends BoatChart<CostFanData> {

    public CostFan(String title) {
        super("kw-cost-fan", title);
    }
}
