package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.keelweigh.decision.Difference;
import org.keelweigh.decision.Ranking;
import org.keelweigh.decision.robust.WeightStability;
import org.keelweigh.haul.CartPlan;
import org.keelweigh.shortlist.Display;

/** Puts a perspective into words. */
public final class Answers {

    private static final double LITTLE = 4;
    private static final double LEVEL = 1e-9;
    private static final double CLEAR = 12;
    private static final int MOST_NAMED = 2;
    /** Weights are told in whole percent: half of one is no step. */
    private static final double LEAST_STEP = 0.005;

    private static final double NO_BORDER = 2;

    private final Measured measured;
    private final Perspective perspective;
    private final Optional<Confidence> confidence;
    private final Optional<NextChecks> next;
    private final Display display;

    private Answers(
            Measured measured, Perspective perspective, Optional<Confidence> confidence, Optional<NextChecks> next) {
        this.measured = measured;
        this.perspective = perspective;
        this.confidence = confidence;
        this.next = next;
        this.display = measured.situation().display();
    }

    /** Says which boat leads from a perspective, why, and what would change it. */
    public static Answer of(Measured measured, Perspective perspective) {
        return of(measured, perspective, Optional.empty(), Optional.empty());
    }

    /** Says the same with how sure it is and what to check next, where that has been worked out. */
    public static Answer of(
            Measured measured, Perspective perspective, Optional<Confidence> confidence, Optional<NextChecks> next) {
        return new Answers(measured, perspective, confidence, next).answer();
    }

    private Answer answer() {
        if (measured.boats().isEmpty()) {
            return none("No boats yet", "Put two or more boats on this shortlist, and the comparison begins.");
        }
        Ranking ranking = perspective.ranking();
        OptionalInt leader = ranking.leader();
        if (leader.isEmpty()) {
            return none(
                    "No boat can be recommended",
                    "Every boat here is ruled out. Each one's reason stands beside it, with what would lift it.");
        }
        OptionalInt second = ranking.runnerUp();
        if (second.isEmpty()) {
            return alone(leader.getAsInt());
        }
        return between(leader.getAsInt(), second.getAsInt(), ranking.margin().orElse(0));
    }

    private Answer none(String headline, String sentence) {
        return new Answer(headline, Answer.Strength.NONE, List.of(sentence), List.of(), List.of(), OptionalInt.empty());
    }

    private Answer alone(int boat) {
        boolean only = measured.boats().size() == 1;
        List<String> sentences = new ArrayList<>();
        sentences.add(
                only
                        ? "Put a second boat beside it to compare."
                        : "Every other boat is ruled out, each for the reason that stands beside it.");
        seats(boat).ifPresent(sentences::add);
        return new Answer(
                name(boat) + (only ? " is the only boat here" : " is the only one left"),
                Answer.Strength.LIKELY,
                sentences,
                figures(boat),
                List.of(),
                OptionalInt.of(boat));
    }

    private Answer between(int leader, int second, double margin) {
        boolean level = level(leader, second, margin);
        Answer.Strength strength = level ? Answer.Strength.OPEN : strength(leader, margin);
        List<String> sentences = new ArrayList<>();
        sentences.add(name(leader) + " is worth "
                + Display.number(perspective.ranking().total(leader), 0) + " of 100 points" + forWhom() + ", "
                + points(margin) + " more than " + name(second) + "."
                + confidence.map(known -> first(known, leader)).orElse(""));
        sentences.add(why(leader, second));
        if (margin < LITTLE) {
            sentences.add("Fewer than " + Display.number(LITTLE, 0)
                    + " points lie between them: let liking decide, or go " + "and test what is not checked.");
        }
        seats(leader).ifPresent(sentences::add);
        next.ifPresent(known -> sentences.add(known.sentence()));
        return new Answer(
                level
                        ? name(leader) + " and " + name(second) + " are level"
                        : strength == Answer.Strength.OPEN
                                ? name(leader) + " and " + name(second) + " are too close to call"
                                : name(leader) + " leads",
                strength,
                sentences,
                figures(leader),
                changes(leader),
                OptionalInt.of(leader));
    }

    /** By the chance of being the best; by the points alone only until that has been worked out. */
    private Answer.Strength strength(int leader, double margin) {
        return confidence
                .map(known -> known.strength(leader))
                .orElse(
                        margin < LITTLE
                                ? Answer.Strength.OPEN
                                : margin < CLEAR ? Answer.Strength.LIKELY : Answer.Strength.SURE);
    }

    /** Whether no more lies between two boats than the sampling of what may come could make. */
    private boolean level(int boat, int other, double margin) {
        int column = measured.yardsticks().column(Measure.REPAIR_RISK);
        double noise = column < 0 ? 0 : perspective.share(column) * noisePoints(column, boat, other);
        return margin <= noise + LEVEL;
    }

    private double noisePoints(int column, int boat, int other) {
        Yardstick yardstick = measured.yardsticks().all().get(column);
        double low = Math.min(measure(boat, yardstick), measure(other, yardstick));
        return Math.abs(yardstick.criterion().valueFunction().value(low)
                - yardstick.criterion().valueFunction().value(low + noise(yardstick, boat, other)));
    }

    /** Twice the standard error of the difference of a measure that is sampled; nothing for those that are not. */
    private double noise(Yardstick yardstick, int boat, int other) {
        return yardstick.measure() != Measure.REPAIR_RISK
                ? 0
                : 2
                        * Math.hypot(
                                measured.boats().get(boat).futures().repairSurpriseError(),
                                measured.boats().get(other).futures().repairSurpriseError());
    }

    private Optional<String> seats(int boat) {
        int seats = measured.boats().get(boat).boat().seats().size();
        int people = measured.situation().paddlers().size();
        return people <= seats
                ? Optional.empty()
                : Optional.of(name(boat) + " has " + (seats == 1 ? "one seat" : seats + " seats") + ", so the " + people
                        + " of you cannot all go at once.");
    }

    private static String first(Confidence confidence, int leader) {
        return " It comes first in " + Confidence.inWords(confidence.chanceBest(leader)) + " weighings.";
    }

    private String forWhom() {
        return perspective.person().isEmpty() ? "" : " to " + perspective.name();
    }

    /** Names what speaks for and against a boat, strongest first, with the measures. */
    public static String why(Measured measured, Perspective perspective, int boat, int other) {
        return new Answers(measured, perspective, Optional.empty(), Optional.empty()).why(boat, other);
    }

    private String why(int boat, int other) {
        Difference difference = perspective.difference(boat, other);
        String pros = named(difference.pros(), boat, other);
        String cons = named(difference.cons(), boat, other);
        if (pros.isEmpty() && cons.isEmpty()) {
            return "Nothing that you weigh tells them apart.";
        }
        if (pros.isEmpty()) {
            return name(boat) + " is ahead of " + name(other) + " in nothing that you weigh.";
        }
        return "It is ahead in " + pros + "; " + name(other) + " is ahead in "
                + (cons.isEmpty() ? "nothing that you weigh" : cons) + ".";
    }

    private String named(List<Difference.Part> parts, int boat, int other) {
        return parts.stream()
                .map(part -> measured.yardsticks().all().get(part.criterion()))
                .filter(each -> !write(each, boat).equals(write(each, other)))
                .filter(each -> Math.abs(measure(boat, each) - measure(other, each)) >= noise(each, boat, other))
                .limit(MOST_NAMED)
                .map(each -> lower(each.name()) + " (" + write(each, boat) + " against " + write(each, other) + ")")
                .collect(Collectors.joining(" and "));
    }

    /** What differs from person to person has no measure of all together; its value stands in. */
    private String write(Yardstick yardstick, int boat) {
        boolean together =
                perspective.person().isEmpty() && measured.situation().people().size() > 1;
        if (yardstick.personal() && together) {
            int column = measured.yardsticks().column(yardstick.measure());
            return Display.number(perspective.value(boat, column), 0) + " of 100";
        }
        return yardstick.unit().write(measure(boat, yardstick), display);
    }

    private double measure(int boat, Yardstick yardstick) {
        int column = measured.yardsticks().column(yardstick.measure());
        return measured.boats().get(boat).measures().get(person()).get(column);
    }

    private int person() {
        for (int p = 0; p < measured.situation().people().size(); p++) {
            if (measured.situation().people().get(p).id().equals(perspective.person())) {
                return p;
            }
        }
        return 0;
    }

    private List<Answer.KeyFigure> figures(int boat) {
        BoatReport report = measured.boats().get(boat);
        List<Answer.KeyFigure> figures = new ArrayList<>();
        figures.add(new Answer.KeyFigure(
                measured.situation().horizonYears() + "-year cost",
                display.money(report.cost().presentValue()),
                "could be " + display.money(report.futures().p10()) + " to "
                        + display.money(report.futures().p90())));
        figures.add(cart(report));
        figures.add(new Answer.KeyFigure(
                "Chance of a dud",
                display.percent(
                        report.measures().getFirst().get(measured.yardsticks().column(Measure.WALK_RISK))),
                display.percent(report.condition().progress().evidenceShare()) + " of what matters was checked"));
        return figures;
    }

    private Answer.KeyFigure cart(BoatReport report) {
        String people = report.cart().verdict().label();
        return report.cart() instanceof CartPlan plan
                ? new Answer.KeyFigure(
                        "On the cart",
                        display.mass(plan.massKg()),
                        "pull " + display.force(plan.worstPullN()) + " at worst: " + people)
                : new Answer.KeyFigure("In its bag", display.mass(report.cart().massKg()), people);
    }

    /** The criteria whose weight has the least room before another boat leads. */
    private List<String> changes(int leader) {
        List<String> changes = new ArrayList<>(perspective.stability().stream()
                .filter(each -> below(each) < NO_BORDER || above(each) < NO_BORDER)
                .sorted(Comparator.comparingDouble(each -> Math.min(below(each), above(each))))
                .limit(MOST_NAMED)
                .map(each -> change(leader, each))
                .toList());
        double best = perspective.ranking().total(leader);
        String never = perspective.neverBest().stream()
                .filter(boat -> perspective.ranking().total(boat) < best - LEVEL)
                .map(this::name)
                .collect(Collectors.joining(" or "));
        if (!never.isEmpty()) {
            changes.add("No weights at all would put " + never + " first alone.");
        }
        return changes;
    }

    /** How far the weight has to fall for another boat to lead. A border that rounds to where it is, or to nought, is none. */
    private static double below(WeightStability each) {
        boolean border = each.winnerBelow().isPresent()
                && each.from() >= LEAST_STEP
                && each.weight() - each.from() >= LEAST_STEP;
        return border ? each.weight() - each.from() : NO_BORDER;
    }

    private static double above(WeightStability each) {
        boolean border = each.winnerAbove().isPresent()
                && each.to() <= 1 - LEAST_STEP
                && each.to() - each.weight() >= LEAST_STEP;
        return border ? each.to() - each.weight() : NO_BORDER;
    }

    private String change(int leader, WeightStability stability) {
        Yardstick yardstick = measured.yardsticks().all().get(stability.criterion());
        boolean below = below(stability) < above(stability);
        int winner = (below ? stability.winnerBelow() : stability.winnerAbove()).orElse(leader);
        return name(winner) + " would lead if " + lower(yardstick.name()) + " counted for "
                + (below ? "less than " : "more than ")
                + Display.number(100 * (below ? stability.from() : stability.to()), 0) + " % (it is "
                + Display.number(100 * stability.weight(), 0) + " % now).";
    }

    private String name(int boat) {
        return measured.boats().get(boat).name();
    }

    private static String lower(String name) {
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    private static String points(double value) {
        return Display.number(value, Math.abs(value) < 10 ? 1 : 0) + (value == 1 ? " point" : " points");
    }
}
