package org.keelweigh.ui.format;

import java.util.Comparator;
import java.util.Optional;
import org.keelweigh.boat.Boat;
import org.keelweigh.haul.CartPlan;
import org.keelweigh.haul.Leg;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.chart.CartDrawingData.Axle;
import org.keelweigh.ui.chart.CartDrawingData.Forces;
import org.keelweigh.ui.chart.CartDrawingData.Hull;
import org.keelweigh.ui.chart.CartDrawingData.Place;
import org.keelweigh.ui.chart.CartDrawingData.Scene;
import org.keelweigh.ui.chart.CartDrawingData.Slope;
import org.keelweigh.ui.chart.Figure;

/** Writes a boat on its cart down for the drawing, with every figure in people's units. */
public final class CartScene {

    private final CartPlan plan;
    private final Display display;

    /** Prepares the writing of one plan. */
    public CartScene(CartPlan plan, Display display) {
        this.plan = plan;
        this.display = display;
    }

    /** Finds the stretch to draw: the hardest one that the cart rolls on; empty when it rolls on none. */
    public Optional<Leg.Rolled> hardest() {
        return plan.worstLeg() instanceof Leg.Rolled leg
                ? Optional.of(leg)
                : plan.rolled().stream()
                        .max(Comparator.comparingDouble(each -> each.pullN().likely()));
    }

    /**
     * Writes the scene on a stretch.
     *
     * @param id what the drawing tells when the boat is chosen
     * @param name the boat's name
     */
    public Scene on(Leg.Rolled leg, String id, String name, Boat boat) {
        double lengthM = boat.lengthM().value();
        double bedM = plan.cart().bedAboveAxleM();
        return new Scene(
                id,
                name,
                plan.reasons().getFirst(),
                new Hull(lengthM, boat.depthM().value(), display.length(lengthM)),
                new Axle(
                        plan.axleStationM(),
                        plan.cart().wheelRadiusM(),
                        "axle " + display.length(plan.axleStationM()) + " from the stern"),
                new Place(plan.gripStationM(), bedM + plan.gripHeightM()),
                new Place(plan.load().stationM(), bedM + plan.load().heightM()),
                new Slope(leg.ground().slopeRad(), slope(leg)),
                new Forces(
                        force(plan.load().weightN()),
                        force(leg.up().wheelN()),
                        force(leg.up().handN()),
                        force(leg.up().pullN())));
    }

    private static String slope(Leg.Rolled leg) {
        double percent = 100 * Math.tan(leg.ground().slopeRad());
        return leg.ground().name() + ", " + (percent < 0.5 ? "level" : Display.number(percent, 0) + " % slope");
    }

    private Figure force(double newtons) {
        return new Figure(newtons, display.force(newtons));
    }
}
