package org.keelweigh.ui.chart;

/** The chance that a boat is the best choice, against the price paid for it. */
public class OfferCurve extends Chart<OfferCurveData> {

    public OfferCurve(String title) {
        super("kw-offer-curve", title);
    }
}
