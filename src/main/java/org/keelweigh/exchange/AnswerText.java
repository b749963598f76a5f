package org.keelweigh.exchange;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.keelweigh.appraisal.Assumption;
import org.keelweigh.appraisal.BoatOffer;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.appraisal.CheckOutlook;
import org.keelweigh.appraisal.NextChecks;
import org.keelweigh.appraisal.OfferWords;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.appraisal.Ruling;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.cost.CostGroup;
import org.keelweigh.cost.CostLine;
import org.keelweigh.decision.robust.WeightStability;
import org.keelweigh.haul.BagCarry;
import org.keelweigh.haul.CartAnswer;
import org.keelweigh.haul.CartPlan;
import org.keelweigh.haul.HaulerAnswer;
import org.keelweigh.haul.Leg;
import org.keelweigh.haul.RoofLift;
import org.keelweigh.haul.RoofLoading;
import org.keelweigh.shortlist.Display;

/** Writes the whole answer as text to be read on a terminal. */
final class AnswerText {

    private final WholeAnswer whole;
    private final Display display;
    private final List<String> lines = new ArrayList<>();

    private AnswerText(WholeAnswer whole) {
        this.whole = whole;
        this.display = whole.measured().situation().display();
    }

    static String of(WholeAnswer whole) {
        AnswerText text = new AnswerText(whole);
        text.all();
        return String.join("\n", text.lines) + "\n";
    }

    private void all() {
        title(whole.measured().facts().shortlist().data().name(), '=');
        if (whole.measured().boats().isEmpty()) {
            lines.add("There are no boats on this shortlist yet.");
        }
        whole.views().forEach(this::view);
        whole.measured().boats().forEach(this::boat);
        if (!whole.oneCart().isEmpty()) {
            title("One cart for all of them", '-');
            lines.add(whole.oneCart());
        }
        assumptions(
                "Assumed about trip and people", whole.measured().situation().assumptions());
    }

    private void view(WholeAnswer.View view) {
        Perspective perspective = view.perspective();
        title(perspective.name(), '-');
        lines.add(view.answer().headline() + ".");
        lines.addAll(view.answer().sentences());
        lines.addAll(view.answer().changes());
        for (int boat : perspective.ranking().order()) {
            place(view, boat);
        }
        lines.add("");
        lines.add("How far each weight can move before another boat leads:");
        perspective.stability().forEach(this::stability);
        next(view.next());
    }

    private void place(WholeAnswer.View view, int boat) {
        Perspective perspective = view.perspective();
        String standing = perspective.ruledOut(boat)
                ? "ruled out"
                : "best in " + display.percent(view.confidence().chanceBest(boat)) + " of weighings (±"
                        + Display.number(100 * view.confidence().chanceBestError(boat), 1) + ")";
        lines.add("");
        lines.add(perspective.ranking().rank(boat) + ". " + name(boat) + ": "
                + Display.number(perspective.ranking().total(boat), 1) + " of 100 points, " + standing);
        lines.add("   " + BreakEvenWords.of(view.offers().get(boat), display));
        offer(view.offers().get(boat));
        List<Yardstick> criteria = whole.measured().yardsticks().all();
        for (int c = 0; c < criteria.size(); c++) {
            Yardstick criterion = criteria.get(c);
            OptionalDouble measure = whole.measure(perspective, boat, c);
            lines.add("   " + wide(criterion.name(), 28)
                    + wide(measure.isEmpty() ? "by person" : criterion.unit().write(measure.getAsDouble(), display), 22)
                    + "value " + right(Display.number(perspective.value(boat, c), 0), 3)
                    + "  weight " + right(display.percent(perspective.share(c)), 5)
                    + "  adds " + right(Display.number(perspective.ranking().contribution(boat, c), 1), 5));
        }
    }

    private void offer(BoatOffer offer) {
        if (offer instanceof BoatOffer.Offer made) {
            made.plan().ifPresent(plan -> lines.add("   " + OfferWords.of(plan, display)));
            made.arguments().forEach(each -> lines.add("      to show the seller: " + each.label()));
        }
    }

    private void next(NextChecks next) {
        lines.add("");
        lines.add("What to check next, worth about " + display.money(next.visitGain()) + " together:");
        if (next.nothingWorthwhile()) {
            lines.add("   " + next.sentence());
        }
        for (CheckOutlook each : next.visit()) {
            lines.add("   " + wide(name(each.boat()), 28) + wide(each.check().title(), 36)
                    + right(Display.number(each.minutes(), 0), 3) + " minutes, changes the choice in "
                    + display.percent(each.changeChance()) + ", worth " + display.money(each.gain()));
        }
    }

    private void stability(WeightStability each) {
        String name = whole.measured().yardsticks().all().get(each.criterion()).name();
        String below = each.winnerBelow().isEmpty()
                ? ""
                : "; below, " + name(each.winnerBelow().getAsInt()) + " leads";
        String above = each.winnerAbove().isEmpty()
                ? ""
                : "; above, " + name(each.winnerAbove().getAsInt()) + " leads";
        lines.add("   " + wide(name, 28) + right(display.percent(each.weight()), 10)
                + (each.holdsEverywhere()
                        ? ", whatever it is"
                        : ", from " + display.percent(each.from()) + " to " + display.percent(each.to()) + below
                                + above));
    }

    private void boat(BoatReport boat) {
        title(boat.name(), '-');
        for (Ruling each : boat.rulings()) {
            lines.add("Deal-breaker, " + each.rule().label() + ": " + each.reason() + " " + each.remedy()
                    + each.lifted().map(reason -> " Lifted: " + reason).orElse(""));
        }
        cost(boat);
        cart(boat.cart());
        boat.loading().forEach(this::loading);
        cautions(boat);
        assumptions("Assumed", boat.assumptions());
    }

    private void cost(BoatReport boat) {
        lines.add("Cost over " + boat.cost().horizonYears() + " years in today's money: "
                + display.money(boat.cost().presentValue()) + "; "
                + display.money(boat.cost().equivalentYearly()) + " a year"
                + (boat.cost().perOuting().isEmpty()
                        ? ""
                        : ", " + display.money(boat.cost().perOuting().getAsDouble()) + " an outing")
                + "; " + display.money(boat.dayOneCash()) + " before the first launch");
        lines.add("   could be " + display.money(boat.futures().p10()) + " to "
                + display.money(boat.futures().p90()) + " (eight futures in ten), half are under "
                + display.money(boat.futures().median()));
        for (CostGroup group : CostGroup.values()) {
            lines.add("   " + wide(group.label(), 50)
                    + right(display.money(boat.cost().presentValue(group)), 10));
            boat.cost().lines().stream().filter(each -> each.group() == group).forEach(this::line);
        }
    }

    private void line(CostLine line) {
        lines.add("     " + wide(line.label() + " (" + line.timing() + ")", 48)
                + right(display.money(line.presentValue()), 10) + "  " + line.why());
    }

    private void cart(CartAnswer cart) {
        lines.add("From car to water: " + cart.verdict().label() + "; " + display.mass(cart.massKg()));
        cart.reasons().forEach(each -> lines.add("   " + each));
        switch (cart) {
            case CartPlan plan -> {
                lines.add("   On a " + plan.cart().label() + ", axle " + display.length(plan.axleStationM())
                        + " from the stern, rated for at least " + display.mass(plan.neededRatingKg()));
                plan.legs().forEach(this::stretch);
            }
            case BagCarry bag -> lines.add("   In its bag, without a cart");
        }
        for (HaulerAnswer each : cart.haulers()) {
            lines.add("   " + each.hauler().name() + ": " + Display.number(each.ratio(), 2) + " of what they keep up, "
                    + (each.alone() ? "alone" : "with help"));
        }
    }

    private void stretch(Leg leg) {
        lines.add("   " + leg.ground().name() + ", " + display.way(leg.ground().distanceM()) + ": "
                + switch (leg) {
                    case Leg.Rolled rolled ->
                        "pull " + display.force(rolled.pullN().likely()) + ", to set off "
                                + display.force(rolled.startN()) + ", hold back "
                                + display.force(rolled.holdBackN()) + ", in the hand "
                                + display.force(rolled.up().handN()) + ", on each wheel "
                                + display.force(rolled.perWheelN());
                    case Leg.Carried carried -> "carried, " + display.mass(carried.eachKg()) + " for each of two";
                });
    }

    private void loading(RoofLoading loading) {
        lines.add("On the car, " + loading.lifter().name() + ", one end at a time onto bars "
                + display.length(loading.barHeightM()) + " high:");
        lift("first end", loading.firstEnd());
        lift("second end", loading.secondEnd());
        lines.add("   " + loading.advice());
    }

    private void lift(String what, RoofLift lift) {
        lines.add("   " + what + " " + display.mass(lift.loadKg()) + ", " + Display.number(lift.liftRatio(), 2)
                + " of a limit of " + display.mass(lift.personKg()) + ", lifting index "
                + (Double.isFinite(lift.index()) ? Display.number(lift.index(), 2) : "without bound") + ": "
                + lift.band().label());
    }

    /** Cart and lift mostly ask for the same care, so it is told once. */
    private void cautions(BoatReport boat) {
        Set<String> once = new LinkedHashSet<>(boat.cart().cautions());
        boat.loading().forEach(each -> once.addAll(each.cautions()));
        lines.add("Keep in mind:");
        once.forEach(each -> lines.add("   " + each));
    }

    private void assumptions(String heading, List<Assumption> assumptions) {
        if (!assumptions.isEmpty()) {
            lines.add(heading + ":");
            assumptions.forEach(each -> lines.add("   " + each.sentence()));
        }
    }

    private void title(String text, char under) {
        lines.add("");
        lines.add(text);
        lines.add(String.valueOf(under).repeat(text.codePointCount(0, text.length())));
    }

    private String name(int boat) {
        return whole.measured().boats().get(boat).name();
    }

    private static String wide(String text, int width) {
        return text + " ".repeat(Math.max(1, width - text.length()));
    }

    private static String right(String text, int width) {
        return " ".repeat(Math.max(0, width - text.length())) + text;
    }
}
