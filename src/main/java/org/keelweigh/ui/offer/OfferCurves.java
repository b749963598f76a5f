package org.keelweigh.ui.offer;

import java.util.ArrayList;
import java.util.List;
import org.keelweigh.appraisal.BoatOffer;
import org.keelweigh.appraisal.Confidence;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.chart.Figure;
import org.keelweigh.ui.chart.OfferCurveData;

/** Puts an offer's curve into the form that is drawn. */
final class OfferCurves {

    private OfferCurves() {}

    static OfferCurveData of(BoatOffer.Offer offer, String name, Display display) {
        List<OfferCurveData.Point> points = offer.curve().stream()
                .map(each -> new OfferCurveData.Point(figure(each.price(), display), 100 * each.chanceBest()))
                .toList();
        List<OfferCurveData.Mark> marks = new ArrayList<>();
        offer.plan().ifPresent(plan -> {
            marks.add(mark(OfferCurveData.Kind.OPENING, "open with", plan.opening(), offer, display));
            marks.add(mark(OfferCurveData.Kind.FAIR, "aim for", plan.target(), offer, display));
            marks.add(mark(OfferCurveData.Kind.WALK_AWAY, "walk away", plan.walkAway(), offer, display));
        });
        marks.add(mark(OfferCurveData.Kind.ASKING, "asked", offer.asking(), offer, display));
        String summary = "At the asking price of " + display.money(offer.asking()) + " " + name
                + " is the best choice in " + Confidence.inWords(chanceAt(offer, offer.asking())) + " weighings.";
        return new OfferCurveData(summary, "price in " + display.currency(), points, marks);
    }

    private static OfferCurveData.Mark mark(
            OfferCurveData.Kind kind, String words, double price, BoatOffer.Offer offer, Display display) {
        return new OfferCurveData.Mark(kind, words, figure(price, display), 100 * chanceAt(offer, price));
    }

    private static Figure figure(double price, Display display) {
        return new Figure(price, display.money(price));
    }

    /** Reads the curve between its points by a straight line. */
    static double chanceAt(BoatOffer.Offer offer, double price) {
        List<BoatOffer.ChanceAt> curve = offer.curve();
        for (int i = 1; i < curve.size(); i++) {
            BoatOffer.ChanceAt below = curve.get(i - 1);
            BoatOffer.ChanceAt above = curve.get(i);
            if (price <= above.price()) {
                double part = Math.max(0, (price - below.price()) / (above.price() - below.price()));
                return below.chanceBest() + part * (above.chanceBest() - below.chanceBest());
            }
        }
        return curve.getLast().chanceBest();
    }
}
