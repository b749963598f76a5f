package org.keelweigh.ui.boat;

import java.util.List;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.haul.CartPlan;
import org.keelweigh.haul.Leg;
import org.keelweigh.quantity.Angle;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.chart.CartDrawingData;
import org.keelweigh.ui.chart.Figure;

/** Draws a boat on its cart, on the stretch that decides. */
final class CartScene {

    private final BoatReport report;
    private final CartPlan plan;
    private final Display display;

    CartScene(BoatReport report, CartPlan plan, Display display) {
        this.report = report;
        this.plan = plan;
        this.display = display;
    }

    CartDrawingData data() {
        return new CartDrawingData(
                report.name() + " weighs " + display.mass(plan.massKg()) + " on the cart; "
                        + plan.reasons().getFirst(),
                List.of(scene()));
    }

    private CartDrawingData.Scene scene() {
        double length = report.boat().lengthM().value();
        double bed = plan.cart().bedAboveAxleM();
        return new CartDrawingData.Scene(
                report.id().toString(),
                report.name(),
                plan.verdict().label(),
                new CartDrawingData.Hull(length, report.boat().depthM().value(), display.length(length)),
                new CartDrawingData.Axle(
                        plan.axleStationM(),
                        plan.cart().wheelRadiusM(),
                        display.length(plan.axleStationM()) + " from the stern"),
                new CartDrawingData.Place(plan.gripStationM(), bed + plan.gripHeightM()),
                new CartDrawingData.Place(
                        plan.load().stationM(), bed + plan.load().heightM()),
                slope(),
                forces());
    }

    private CartDrawingData.Slope slope() {
        double rad = plan.worstLeg().ground().slopeRad();
        String label = rad == 0 ? "level" : Display.number(new Angle(rad).gradePercent(), 0) + " % uphill";
        return new CartDrawingData.Slope(
                rad, label + ", " + plan.worstLeg().ground().surface().label());
    }

    private CartDrawingData.Forces forces() {
        Figure weight = force(plan.load().weightN());
        return switch (plan.worstLeg()) {
            case Leg.Rolled rolled ->
                new CartDrawingData.Forces(
                        weight,
                        force(rolled.up().wheelN()),
                        force(rolled.up().handN()),
                        force(rolled.up().pullN()));
            case Leg.Carried carried -> new CartDrawingData.Forces(weight, force(0), force(0), force(0));
        };
    }

    private Figure force(double newtons) {
        return new Figure(newtons, display.force(newtons));
    }
}
