package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.keelweigh.decision.acceptability.WeightSample;
import org.keelweigh.decision.information.Prospect;
import org.keelweigh.decision.information.TestOutlook;
import org.keelweigh.decision.information.VisitPlan;
import org.keelweigh.decision.information.VisitPlanner;
import org.keelweigh.shortlist.Display;

/**
 * Works out what each check not made is expected to gain before choosing, and the running order of a visit.
 *
 * <p>A report moves the boat's total by a straight line: each unit of expected repair cost by the weight of the cost times
 * the slope of its value function where the boat stands; each percent of being a dud by what the person's own weight of
 * that chance takes off, or by what a dud costs where that is more: most of its price, and the step down to the best other
 * boat. So a total is never expected to move, and the laws of information hold exactly. Points become money at the leader's
 * own rate. See {@code docs/method/appraisal.md}.
 */
public final class CheckAdvisor {

    private static final int WEIGHINGS = 256;
    private static final int MOST_PLANNED = 14;
    private static final double VISIT_MINUTES = 45;
    private static final double WORTH_A_MINUTE = 0.25;
    private static final double LEAST_RATE = 1e-4;
    /** A boat that is good for parts only fetches 30 % of its price: the depreciation table's factor. */
    private static final double LOST_ON_A_DUD = 0.7;

    private final Outlook outlook;
    private final Perspective perspective;
    private final int dudColumn;
    private final double moneyPerPoint;
    private final WeightSample weights;
    private final List<Test> tests = new ArrayList<>();

    private record Test(int boat, BoatProspects.Prospective prospective, TestOutlook result) {}

    private CheckAdvisor(Outlook outlook, Perspective perspective) {
        this.outlook = outlook;
        this.perspective = perspective;
        this.dudColumn = outlook.measured().yardsticks().column(Measure.WALK_RISK);
        this.weights = outlook.draw(perspective);
        int leader = perspective.ranking().leader().orElse(0);
        double rate = perspective.share(outlook.costColumn()) * Math.abs(slope(leader));
        this.moneyPerPoint = 1 / Math.max(LEAST_RATE, rate);
    }

    /** Works out what to check next; with fewer than two boats to choose from there is nothing to settle. */
    public static NextChecks advise(Catalogues catalogues, Outlook outlook, Perspective perspective) {
        return advise(catalogues, outlook, perspective, false);
    }

    /** Works out what perfect looks would gain: the bound that no real check passes. */
    static NextChecks bound(Catalogues catalogues, Outlook outlook, Perspective perspective) {
        return advise(catalogues, outlook, perspective, true);
    }

    private static NextChecks advise(Catalogues catalogues, Outlook outlook, Perspective perspective, boolean perfect) {
        if (outlook.costColumn() < 0 || perspective.ranking().runnerUp().isEmpty()) {
            return new NextChecks(
                    List.of(),
                    List.of(),
                    0,
                    0,
                    0,
                    "With fewer than two boats to choose from, no check changes the choice.");
        }
        CheckAdvisor advisor = new CheckAdvisor(outlook, perspective);
        double money = outlook.measured().situation().priceFactor();
        for (int boat = 0; boat < perspective.size(); boat++) {
            if (!perspective.ruledOut(boat)) {
                int at = boat;
                BoatProspects.of(catalogues, outlook.measured().boats().get(boat), money, perfect)
                        .forEach(each -> advisor.add(at, each));
            }
        }
        return advisor.answer();
    }

    private void add(int boat, BoatProspects.Prospective prospective) {
        int boats = perspective.size();
        int samples = Math.min(WEIGHINGS, weights.samples());
        double[][] base = new double[samples][];
        double[][] after = new double[samples][];
        for (int s = 0; s < samples; s++) {
            base[s] = totals(s, boats);
            after[s] = moved(
                    boat,
                    prospective,
                    base[s][boat],
                    best(base[s], boat),
                    weights.weight(outlook.costColumn(), s),
                    dudColumn < 0 ? 0 : weights.weight(dudColumn, s));
        }
        TestOutlook result = TestOutlook.evaluate(base, boat, prospective.probability(), after);
        tests.add(new Test(boat, prospective, result));
    }

    private double[] totals(int sample, int boats) {
        double[] totals = new double[boats];
        for (int b = 0; b < boats; b++) {
            if (perspective.ruledOut(b)) {
                totals[b] = Double.NEGATIVE_INFINITY;
                continue;
            }
            for (int c = 0; c < weights.criteria(); c++) {
                totals[b] += weights.weight(c, sample) * perspective.value(b, c);
            }
        }
        return totals;
    }

    private static double best(double[] totals, int but) {
        double best = Double.NEGATIVE_INFINITY;
        for (int b = 0; b < totals.length; b++) {
            best = b == but ? best : Math.max(best, totals[b]);
        }
        return best;
    }

    /** The boat's total after each report. Whoever bought a dud has lost most of its price and goes on to the best other. */
    private double[] moved(
            int boat,
            BoatProspects.Prospective prospective,
            double total,
            double bestOther,
            double costWeight,
            double dudWeight) {
        double[] after = new double[prospective.probability().length];
        double perMoney = costWeight * slope(boat);
        double lost =
                LOST_ON_A_DUD * outlook.measured().boats().get(boat).price().value();
        double consequence = perMoney * lost - Math.max(0, total - bestOther);
        double perDud = Math.min(consequence, dudWeight * dudSlope(boat));
        for (int r = 0; r < after.length; r++) {
            after[r] = total
                    + perMoney * prospective.repairs()[r]
                    + perDud * prospective.dud()[r];
        }
        return after;
    }

    /** The slope of the value of the chance of a dud where a boat stands, points for each unit of its own chance. */
    private double dudSlope(int boat) {
        if (dudColumn < 0) {
            return 0;
        }
        BoatReport report = outlook.measured().boats().get(boat);
        return (1 - report.trust().listing().concern())
                * outlook.measured()
                        .yardsticks()
                        .all()
                        .get(dudColumn)
                        .criterion()
                        .valueFunction()
                        .marginal(report.measures().getFirst().get(dudColumn));
    }

    /** The slope of the value of cost where a boat stands, points for each unit of money, at most zero. */
    private double slope(int boat) {
        double cost = outlook.measured().boats().get(boat).measures().getFirst().get(outlook.costColumn());
        return outlook.measured()
                .yardsticks()
                .all()
                .get(outlook.costColumn())
                .criterion()
                .valueFunction()
                .marginal(cost);
    }

    private NextChecks answer() {
        List<CheckOutlook> outlooks = tests.stream()
                .map(this::outlook)
                .filter(each -> each.changeChance() > 0)
                .sorted(Comparator.comparingDouble(CheckOutlook::gainPerMinute).reversed())
                .toList();
        List<Test> best = tests.stream()
                .filter(each -> !each.result().cannotChangeTheChoice())
                .sorted(Comparator.comparingDouble((Test each) -> -each.result().gain()))
                .limit(MOST_PLANNED)
                .toList();
        VisitPlan plan = VisitPlanner.plan(
                best.stream()
                        .map(each -> new VisitPlanner.Candidate(
                                Math.max(1, each.prospective().check().minutes()), 0))
                        .toList(),
                chosen -> gain(chosen.stream().mapToObj(best::get).toList()),
                VISIT_MINUTES,
                WORTH_A_MINUTE * outlook.measured().situation().priceFactor());
        List<CheckOutlook> visit = new ArrayList<>();
        double gain = 0;
        if (plan instanceof VisitPlan.Route route) {
            route.steps().forEach(step -> visit.add(outlook(best.get(step.test()))));
            gain = route.gain();
        }
        double minutes = visit.stream().mapToDouble(CheckOutlook::minutes).sum();
        return new NextChecks(outlooks, visit, minutes, gain, gain(tests), sentence(visit, minutes, gain));
    }

    private CheckOutlook outlook(Test test) {
        return new CheckOutlook(
                test.boat(),
                test.prospective().check(),
                test.result().gain() * moneyPerPoint,
                test.result().gainError() * moneyPerPoint,
                test.result().changeChance(),
                test.prospective().check().minutes());
    }

    /** The expected gain of several reports together, at the stated weights; reports on one boat are taken one by one. */
    private double gain(List<Test> chosen) {
        List<Prospect> prospects = new ArrayList<>();
        for (int boat = 0; boat < perspective.size(); boat++) {
            if (!perspective.ruledOut(boat)) {
                prospects.add(prospect(boat, chosen));
            }
        }
        return Prospect.gain(prospects) * moneyPerPoint;
    }

    private Prospect prospect(int boat, List<Test> chosen) {
        double total = perspective.ranking().total(boat);
        double bestOther = best(eligibleTotals(), boat);
        Spread spread = Spread.at(total);
        for (Test test : chosen) {
            if (test.boat() == boat) {
                double[] after = moved(
                        boat,
                        test.prospective(),
                        total,
                        bestOther,
                        perspective.share(outlook.costColumn()),
                        dudColumn < 0 ? 0 : perspective.share(dudColumn));
                spread = spread.plus(test.prospective().probability(), after, total);
            }
        }
        return new Prospect(spread.probability(), spread.value());
    }

    private double[] eligibleTotals() {
        double[] totals = new double[perspective.size()];
        for (int b = 0; b < totals.length; b++) {
            totals[b] = perspective.ruledOut(b)
                    ? Double.NEGATIVE_INFINITY
                    : perspective.ranking().total(b);
        }
        return totals;
    }

    private String sentence(List<CheckOutlook> visit, double minutes, double gain) {
        if (visit.isEmpty()) {
            return "No single report left is likely enough to change the choice to be worth the trip.";
        }
        CheckOutlook first = visit.getFirst();
        String boat = outlook.measured().boats().get(first.boat()).name();
        String lead = "Before paying, check this on " + boat + ": "
                + lower(first.check().title()) + " ("
                + Display.number(first.minutes(), 0) + " minutes; it would change the choice in "
                + Confidence.inWords(first.changeChance()) + " cases).";
        return visit.size() == 1
                ? lead
                : lead + " These " + visit.size() + " checks take " + Display.number(minutes, 0)
                        + " minutes and are worth about "
                        + outlook.measured().situation().display().money(gain) + " to you before you choose.";
    }

    private static String lower(String text) {
        return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }
}
