package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.keelweigh.decision.Ranking;
import org.keelweigh.haul.CartPlan;
import org.keelweigh.shortlist.Display;

/** Puts a perspective into words. */
public final class Answers {

    private static final double LITTLE = 4;
    private static final double CLEAR = 12;
    private final Measured measured;
    private final Perspective perspective;
    private final Optional<Confidence> confidence;
    private final Optional<NextChecks> next;
    private final Display display;
    private final Reasons reasons;

    private Answers(
            Measured measured, Perspective perspective, Optional<Confidence> confidence, Optional<NextChecks> next) {
        this.measured = measured;
        this.perspective = perspective;
        this.confidence = confidence;
        this.next = next;
        this.display = measured.situation().display();
        this.reasons = new Reasons(measured, perspective);
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
        boolean level = reasons.level(leader, second, margin);
        Answer.Strength strength = level ? Answer.Strength.OPEN : strength(leader, margin);
        List<String> sentences = new ArrayList<>();
        sentences.add(name(leader) + " is worth "
                + Display.number(perspective.ranking().total(leader), 0) + " of 100 points" + forWhom() + ", "
                + points(margin) + " more than " + name(second) + "."
                + confidence.map(known -> first(known, leader)).orElse(""));
        sentences.add(reasons.of(leader, second));
        if (margin < LITTLE) {
            sentences.add("Fewer than " + Display.number(LITTLE, 0)
                    + " points lie between them: let liking decide, or go and test what is not checked.");
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
                new Borders(measured, perspective).sentences(leader),
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

    private Optional<String> seats(int boat) {
        int seats = measured.boats().get(boat).boat().seats().size();
        int people = measured.situation().paddlers().size();
        return people <= seats
                ? Optional.empty()
                : Optional.of(name(boat) + " has " + (seats == 1 ? "one seat" : seats + " seats") + ", so "
                        + (people == 2 ? "the two of you cannot both go" : "the " + people + " of you cannot all go")
                        + " at once.");
    }

    private static String first(Confidence confidence, int leader) {
        return " It comes first in " + Confidence.inWords(confidence.chanceBest(leader)) + " weighings.";
    }

    private String forWhom() {
        return perspective.person().isEmpty() ? "" : " to " + perspective.name();
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

    private String name(int boat) {
        return measured.boats().get(boat).name();
    }

    private static String points(double value) {
        return Display.number(value, Math.abs(value) < 10 ? 1 : 0) + (value == 1 ? " point" : " points");
    }
}
