package org.keelweigh.exchange;

import static org.keelweigh.exchange.TextPage.right;
import static org.keelweigh.exchange.TextPage.wide;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.appraisal.Ruling;
import org.keelweigh.condition.BoatHistory;
import org.keelweigh.condition.CauseAccount;
import org.keelweigh.cost.CostGroup;
import org.keelweigh.cost.CostLine;
import org.keelweigh.haul.BagCarry;
import org.keelweigh.haul.CartAnswer;
import org.keelweigh.haul.CartPlan;
import org.keelweigh.haul.HaulerAnswer;
import org.keelweigh.haul.Leg;
import org.keelweigh.haul.RoofLift;
import org.keelweigh.haul.RoofLoading;
import org.keelweigh.shortlist.Display;

/** Writes what was found out about one boat: deal-breakers, its past, its cost, and the way to the water. */
final class BoatText {

    private static final int STEP = 3;
    private static final int CAUSE_WIDTH = 40;
    private static final int MONEY_WIDTH = 12;
    private static final int MOST_NAMED = 3;

    private final TextPage page;
    private final BoatReport boat;
    private final Display display;

    private BoatText(TextPage page, BoatReport boat, Display display) {
        this.page = page;
        this.boat = boat;
        this.display = display;
    }

    static void write(TextPage page, WholeAnswer whole, int boat) {
        BoatReport report = whole.measured().boats().get(boat);
        new BoatText(page, report, whole.measured().situation().display())
                .all(whole.causes().get(boat));
    }

    private void all(List<CauseAccount> causes) {
        page.title(boat.name(), '-');
        for (Ruling each : boat.rulings()) {
            page.say("Deal-breaker, " + each.rule().label() + ": " + each.reason() + " " + each.remedy()
                    + each.lifted().map(reason -> " Lifted: " + reason).orElse(""));
        }
        past(causes);
        cost();
        cart(boat.cart());
        boat.loading().forEach(this::loading);
        cautions();
        AnswerText.assumptions(page, "Assumed", boat.assumptions());
    }

    private void past(List<CauseAccount> causes) {
        if (!boat.histories().isEmpty()) {
            page.say("What its past seems to be:");
            boat.histories().stream().map(BoatHistory::sentence).forEach(each -> page.item(STEP, each + "."));
        }
        page.blank();
        page.say("Hidden causes, the chance of each now and before anything was seen:");
        for (CauseAccount each : causes) {
            page.line("   " + wide(each.label(), CAUSE_WIDTH) + right(display.percent(each.now()), 9) + ", was "
                    + display.percent(each.before()));
            moved(each, "likelier by", 1);
            moved(each, "less likely by", -1);
        }
    }

    private void moved(CauseAccount cause, String how, int sign) {
        String by = cause.moved().stream()
                .filter(each -> sign * each.logOdds() > 0)
                .limit(MOST_NAMED)
                .map(CauseAccount.Moved::phrase)
                .collect(Collectors.joining("; "));
        if (!by.isEmpty()) {
            page.item(2 * STEP, how + ": " + by);
        }
    }

    private void cost() {
        page.blank();
        page.say("Cost over " + boat.cost().horizonYears() + " years in today's money: "
                + display.money(boat.cost().presentValue()) + "; "
                + display.money(boat.cost().equivalentYearly()) + " a year"
                + (boat.cost().perOuting().isEmpty()
                        ? ""
                        : ", " + display.money(boat.cost().perOuting().getAsDouble()) + " an outing")
                + "; " + display.money(boat.dayOneCash()) + " before the first launch");
        page.item(
                STEP,
                "In one future of ten it stays under "
                        + display.money(boat.futures().p10()) + " (P10), in half under "
                        + display.money(boat.futures().median()) + " (median), in nine of ten under "
                        + display.money(boat.futures().p90()) + " (P90).");
        for (CostGroup group : CostGroup.values()) {
            page.item(STEP, group.label() + ", " + display.money(boat.cost().presentValue(group)) + ":");
            boat.cost().lines().stream().filter(each -> each.group() == group).forEach(this::line);
        }
    }

    private void line(CostLine line) {
        page.beside(
                right(display.money(line.presentValue()), MONEY_WIDTH) + "  ",
                line.label() + ", " + line.timing() + ": " + line.why());
    }

    private void cart(CartAnswer cart) {
        page.blank();
        page.say("From car to water: " + cart.verdict().label() + "; " + display.mass(cart.massKg()));
        cart.reasons().forEach(each -> page.item(STEP, each));
        switch (cart) {
            case CartPlan plan -> {
                page.item(
                        STEP,
                        "On a " + plan.cart().label() + ", axle " + display.length(plan.axleStationM())
                                + " from the stern, rated for at least " + display.mass(plan.neededRatingKg()));
                plan.legs().forEach(this::stretch);
            }
            case BagCarry bag -> page.item(STEP, "In its bag, without a cart");
        }
        for (HaulerAnswer each : cart.haulers()) {
            page.item(
                    STEP,
                    each.hauler().name() + ": " + Display.number(each.ratio(), 2) + " of what they keep up, "
                            + (each.alone() ? "alone" : "with help"));
        }
    }

    private void stretch(Leg leg) {
        page.item(
                STEP,
                leg.ground().name() + ", " + display.way(leg.ground().distanceM()) + ": "
                        + switch (leg) {
                            case Leg.Rolled rolled ->
                                "pull " + display.force(rolled.pullN().likely()) + ", to set off "
                                        + display.force(rolled.startN()) + ", hold back "
                                        + display.force(rolled.holdBackN()) + ", in the hand "
                                        + display.force(rolled.up().handN()) + ", on each wheel "
                                        + display.force(rolled.perWheelN());
                            case Leg.Carried carried ->
                                "carried, " + display.mass(carried.eachKg()) + " for each of two";
                        });
    }

    private void loading(RoofLoading loading) {
        page.say("On the car, " + loading.lifter().name() + ", one end at a time onto bars "
                + display.length(loading.barHeightM()) + " high:");
        lift("first end", loading.firstEnd());
        lift("second end", loading.secondEnd());
        page.item(STEP, loading.advice());
    }

    private void lift(String what, RoofLift lift) {
        page.item(
                STEP,
                what + " " + display.mass(lift.loadKg()) + ", " + Display.number(lift.liftRatio(), 2)
                        + " of a limit of "
                        + display.mass(lift.personKg()) + ", lifting index "
                        + (Double.isFinite(lift.index()) ? Display.number(lift.index(), 2) : "without bound") + ": "
                        + lift.band().label());
    }

    /** Cart and lift mostly ask for the same care, so it is told once. */
    private void cautions() {
        Set<String> once = new LinkedHashSet<>(boat.cart().cautions());
        boat.loading().forEach(each -> once.addAll(each.cautions()));
        page.blank();
        page.say("Keep in mind:");
        once.forEach(each -> page.item(STEP, each));
    }
}
