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

    private static final double TOO_CLOSE = 4;
    private static final double CLEAR = 12;
    private static final int MOST_NAMED = 2;

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
        String sentence = measured.boats().size() == 1
                ? "It is the only boat here; put a second one beside it to compare."
                : "Every other boat is ruled out, each for the reason that stands beside it.";
        return new Answer(
                name(boat) + " is the only one left",
                Answer.Strength.LIKELY,
                List.of(sentence),
                figures(boat),
                List.of(),
                OptionalInt.of(boat));
    }

    private Answer between(int leader, int second, double margin) {
        boolean close = margin < TOO_CLOSE;
        String headline =
                close ? name(leader) + " and " + name(second) + " are too close to call" : name(leader) + " leads";
        List<String> sentences = new ArrayList<>();
        sentences.add(name(leader) + " is worth "
                + Display.number(perspective.ranking().total(leader), 0) + " of 100 points" + forWhom() + ", "
                + points(margin) + " more than " + name(second) + "."
                + confidence.map(known -> first(known, leader)).orElse(""));
        sentences.add(why(leader, second));
        if (close) {
            sentences.add("With so little between them, let liking decide, or go and test what is not checked.");
        }
        next.ifPresent(known -> sentences.add(known.sentence()));
        return new Answer(
                headline,
                strength(leader, margin),
                sentences,
                figures(leader),
                changes(leader),
                OptionalInt.of(leader));
    }

    private Answer.Strength strength(int leader, double margin) {
        if (margin < TOO_CLOSE) {
            return Answer.Strength.OPEN;
        }
        return confidence
                .map(known -> known.strength(leader))
                .orElse(margin < CLEAR ? Answer.Strength.LIKELY : Answer.Strength.SURE);
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
        if (pros.isEmpty()) {
            return "Nothing speaks for " + name(boat) + " against " + name(other) + ".";
        }
        return "For it speaks " + pros
                + (cons.isEmpty()
                        ? "; nothing that you weigh speaks for " + name(other) + "."
                        : "; for " + name(other) + " speaks " + cons + ".");
    }

    private String named(List<Difference.Part> parts, int boat, int other) {
        return parts.stream()
                .map(part -> measured.yardsticks().all().get(part.criterion()))
                .filter(each -> !write(each, boat).equals(write(each, other)))
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
        return perspective.stability().stream()
                .filter(each ->
                        each.winnerBelow().isPresent() || each.winnerAbove().isPresent())
                .sorted(Comparator.comparingDouble(WeightStability::room))
                .limit(MOST_NAMED)
                .map(each -> change(leader, each))
                .toList();
    }

    private String change(int leader, WeightStability stability) {
        Yardstick yardstick = measured.yardsticks().all().get(stability.criterion());
        double down = stability.winnerBelow().isPresent() ? stability.weight() - stability.from() : 2;
        double up = stability.winnerAbove().isPresent() ? stability.to() - stability.weight() : 2;
        boolean below = down < up;
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
