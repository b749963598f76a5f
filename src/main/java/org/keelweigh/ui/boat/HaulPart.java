package org.keelweigh.ui.boat;

import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.haul.BagCarry;
import org.keelweigh.haul.CartAnswer;
import org.keelweigh.haul.CartPlan;
import org.keelweigh.haul.HaulerAnswer;
import org.keelweigh.haul.Leg;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.chart.CartDrawing;
import org.keelweigh.ui.chart.CartDrawingData;
import org.keelweigh.ui.format.CartScene;
import org.keelweigh.ui.format.FoldingTable;

/** From the car to the water and back on to the car. */
final class HaulPart extends BoatPart {

    /** The load constant of the revised lifting equation. */
    private static final double LIFT_CONSTANT_KG = 23;

    private final Div verdict = new Div();
    private final CartDrawing drawing = new CartDrawing("On the cart, drawn to scale");
    private final Div cart = Plain.row("kw-stack");
    private final LiftPart lift;

    HaulPart(BoatDesk desk) {
        super(desk);
        lift = new LiftPart(desk);
        verdict.setTestId("haul-verdict");
        Div frame = Plain.row("kw-sheet", drawing);
        add(Plain.sheet("From the car to the water", verdict), frame, cart, lift, formulas());
        refresh();
    }

    @Override
    void refresh() {
        BoatReport report = desk().report();
        CartAnswer answer = report.cart();
        verdict.removeAll();
        verdict.add(
                Plain.row("kw-row", Plain.tag("Takes: " + answer.verdict().label(), Plain.Tone.QUIET)),
                Plain.list(answer.reasons()),
                assumptions(answer.assumptions()),
                Plain.caution(answer.cautions()));
        cart.removeAll();
        switch (answer) {
            case CartPlan plan -> plan(report, plan);
            case BagCarry bag -> drawing.getParent().ifPresent(frame -> frame.setVisible(false));
        }
        cart.add(haulers(answer.haulers()));
        lift.refresh();
    }

    private void plan(BoatReport report, CartPlan plan) {
        Optional<CartDrawingData> picture = picture(report, plan);
        drawing.getParent().ifPresent(frame -> frame.setVisible(picture.isPresent()));
        picture.ifPresent(drawing::setData);
        cart.add(Plain.sheet(
                "Stretch by stretch",
                FoldingTable.of(
                        "Forces on each stretch, with " + plan.cart().label(),
                        List.of(
                                "stretch",
                                "ground",
                                "way",
                                "pull up",
                                "to set off",
                                "hold back down",
                                "in the hand, up",
                                "in the hand, down",
                                "each wheel",
                                "rating needed"),
                        plan.legs().stream().map(this::leg).toList(),
                        2),
                rating(plan)));
        cart.add(axle(plan));
    }

    private Optional<CartDrawingData> picture(BoatReport report, CartPlan plan) {
        CartScene scene = new CartScene(plan, desk().display());
        return scene.hardest()
                .map(leg -> scene.on(leg, report.id().toString(), report.name(), report.boat()))
                .map(drawn -> new CartDrawingData(
                        report.name() + " weighs " + desk().display().mass(plan.massKg()) + " on the cart; "
                                + plan.reasons().getFirst(),
                        List.of(drawn)));
    }

    private List<String> leg(Leg leg) {
        Display display = desk().display();
        List<String> cells = new ArrayList<>(List.of(
                leg.ground().name(),
                leg.ground().surface().label(),
                display.way(leg.ground().distanceM())));
        switch (leg) {
            case Leg.Rolled rolled ->
                cells.addAll(List.of(
                        display.force(rolled.pullN().likely()),
                        display.force(rolled.startN()),
                        rolled.holdBackN() > 0 ? display.force(rolled.holdBackN()) : "nothing",
                        hand(rolled.up().handN()),
                        hand(rolled.down().handN()),
                        display.force(rolled.perWheelN()),
                        display.mass(rolled.neededRatingKg())));
            case Leg.Carried carried ->
                cells.addAll(List.of(
                        "carried by two: " + display.mass(carried.eachKg()) + " each", "–", "–", "–", "–", "–", "–"));
        }
        return cells;
    }

    private String hand(double newtons) {
        String force = desk().display().force(Math.abs(newtons));
        return newtons < 0 ? "press down " + force : "lift " + force;
    }

    private Paragraph rating(CartPlan plan) {
        Display display = desk().display();
        return Plain.soft(
                "The cart needs a rating of " + display.mass(plan.neededRatingKg()) + ", with an allowance for bumps; "
                        + plan.countedRatingKg()
                                .map(rated -> "yours can be counted on for " + display.mass(rated) + ".")
                                .orElse("nobody said what yours is rated for."));
    }

    private Div axle(CartPlan plan) {
        Display display = desk().display();
        String where = "It stands " + display.length(plan.axleStationM()) + " from the stern. Best is "
                + display.length(plan.axle().stationM()) + ": the hand then lifts "
                + display.force(plan.axle().leastHandN()) + " to "
                + display.force(plan.axle().mostHandN()) + " on the way.";
        String comfort = plan.axle().comfortable()
                ? "There the bow is comfortable to hold on every stretch, both ways."
                : "No place is comfortable on every stretch; this is the best compromise.";
        Div sheet = Plain.row("kw-sheet", new H3("Where to set the axle"), new Paragraph(where), Plain.soft(comfort));
        if (plan.loadsDrainHoles()) {
            sheet.add(Plain.caution(List.of("This cart's posts stand in the drain holes and load their rims.")));
        }
        return sheet;
    }

    private Div haulers(List<HaulerAnswer> haulers) {
        Div sheet = Plain.row("kw-sheet", new H3("Who hauls"));
        for (HaulerAnswer each : haulers) {
            String name = each.hauler().name();
            String alone = each.alone() ? name + " can do it alone" : name + " needs a second person";
            String rest = each.ratio() > 0
                    ? ": the steady pull is " + desk().display().percent(each.ratio()) + " of what " + name
                            + " keeps up"
                            + (each.hauler().assumed() ? " (a usual limit is assumed)" : "") + ", with a rest after "
                            + desk().display().way(each.restAfterM()) + "."
                    : ".";
            sheet.add(new Paragraph(alone + rest), Plain.list(each.needsHelp()));
        }
        return sheet;
    }

    private static Div assumptions(List<String> assumptions) {
        Div all = new Div();
        assumptions.forEach(each -> all.add(Plain.row("kw-assumed", new Text("Assumed: " + each))));
        return all;
    }

    private Div formulas() {
        return Plain.row(
                "kw-sheet",
                Plain.details(
                        "How it is reckoned",
                        Plain.soft(
                                "The loaded boat is one rigid body that rolls steadily; the ground's force passes through the axle. "
                                        + "With weight W, slope θ, rolling resistance c, wheel load N and, in the hand, F across and P along the slope: "
                                        + "N + F = W cos θ, P = W sin θ + c N, and "
                                        + "F = W [cos θ (x_g − x_a) + c h cos θ + (h − H) sin θ] / (x_h − x_a + c h). "
                                        + "x_g, x_a, x_h: centre of gravity, axle and hand from the stern; H and h: heights of centre and hand above the axle. "
                                        + "Downhill c changes its sign. Statics from first principles; rolling resistances are estimates."),
                        Plain.soft("Lifting: the revised lifting equation, limit = "
                                + desk().display().mass(LIFT_CONSTANT_KG)
                                + " × six multipliers; load divided by limit is the index. "
                                + "Source: Waters, Putz-Anderson and Garg, Applications Manual for the Revised NIOSH Lifting Equation, 1994. "
                                + "A limit that a person has tested stands beside it and wins when it is lower.")));
    }
}
