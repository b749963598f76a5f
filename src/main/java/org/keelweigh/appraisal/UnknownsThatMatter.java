package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleConsumer;
import java.util.stream.Stream;
import org.keelweigh.decision.Ranking;
import org.keelweigh.decision.robust.Tornado;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Facts;

/**
 * Which of the things that nobody said could move the lead most: each figure goes alone to its plausible low and high end, each
 * choice alone to everything else that it could be, and the boats are measured anew.
 *
 * @param leader the boat that leads with everything as assumed
 * @param runnerUp the boat behind it
 * @param margin points between the two
 * @param unknowns widest swing first
 */
public record UnknownsThatMatter(String leader, String runnerUp, double margin, List<Unknown> unknowns) {

    /** Enough for the swing of a margin, because all measurements use the same draws; see {@code docs/method/appraisal.md}. */
    private static final int FUTURES = 512;

    private static final double RULED_OUT = 100;

    public UnknownsThatMatter {
        unknowns = List.copyOf(unknowns);
    }

    /** Whether an unknown is a figure with a range or a choice from a list. */
    public enum Sort {
        FIGURE,
        CHOICE
    }

    /**
     * What one unknown can do.
     *
     * @param field the field's path, as in {@link Assumption}
     * @param boat the boat it is about; empty for trip and people
     * @param name what it is
     * @param sort whether it is a figure or a choice
     * @param assumed the value that is assumed, with its unit
     * @param tried what it was set to: the two ends of a figure's range, low first; for a choice what is assumed and then
     *     everything else that it could be
     */
    public record Unknown(
            String field, Optional<CandidateId> boat, String name, Sort sort, String assumed, List<Tried> tried) {

        public Unknown {
            tried = List.copyOf(tried);
        }

        /** Tells by how many points the lead moves between the values tried. */
        public double swing() {
            return better().margin() - worse().margin();
        }

        /** Tells whether another boat would lead at one of the values tried. */
        public boolean changesLeader() {
            return worse().margin() < 0;
        }

        /** Lists the values at which another boat would lead, the clearest first. */
        public List<Tried> changers() {
            return tried.stream()
                    .filter(each -> each.margin() < 0)
                    .sorted(Comparator.comparingDouble(Tried::margin))
                    .toList();
        }

        /** Tells at which value the leader is worst off. */
        public Tried worse() {
            return Collections.min(tried, Comparator.comparingDouble(Tried::margin));
        }

        /** Tells at which value the leader is best off. */
        public Tried better() {
            return Collections.max(tried, Comparator.comparingDouble(Tried::margin));
        }
    }

    /**
     * One value that an unknown was set to.
     *
     * @param value the value, with its unit
     * @param margin the lead of the base case's leader there, in points; negative when another boat leads
     */
    public record Tried(String value, double margin) {}

    /**
     * Sets each assumed figure of a shortlist to both ends of its range and each choice to everything that it could be.
     *
     * @param progress hears the share of the work that is done, 0 to 1
     * @return empty if fewer than two boats are left to choose from or nothing was assumed
     */
    public static Optional<UnknownsThatMatter> find(
            Appraiser appraiser, Facts facts, int thisYear, DoubleConsumer progress) {
        if (facts.candidates().size() < 2) {
            return Optional.empty();
        }
        Measured base = appraiser.measure(facts, thisYear, null, FUTURES);
        List<AssumedFigure> figures = AssumedFigures.of(base);
        List<AssumedChoice> choices = AssumedChoices.of(base, appraiser.catalogues());
        Ranking ranking = base.perspectives().getFirst().ranking();
        OptionalInt second = ranking.runnerUp();
        if (second.isEmpty() || figures.isEmpty() && choices.isEmpty()) {
            return Optional.empty();
        }
        int work = 1
                + 2 * figures.size()
                + choices.stream().mapToInt(each -> each.others().size()).sum();
        Remeasuring again = new Remeasuring(appraiser, base, thisYear, new Progress(progress, work));
        Tornado tornado = Tornado.of(
                figures.stream().map(AssumedFigure::factor).toList(), values -> again.totals(figures, values));
        Stream<Unknown> ofFigures = tornado.bars().stream().map(bar -> unknown(figure(figures, bar.factor()), bar));
        Stream<Unknown> ofChoices =
                choices.stream().map(each -> unknown(each, again, tornado.winner(), tornado.baseMargin()));
        List<Unknown> unknowns = Stream.concat(ofFigures, ofChoices)
                .sorted(Comparator.comparingDouble(Unknown::swing).reversed())
                .toList();
        return Optional.of(new UnknownsThatMatter(
                base.boats().get(tornado.winner()).name(),
                base.boats().get(second.getAsInt()).name(),
                tornado.baseMargin(),
                unknowns));
    }

    private static AssumedFigure figure(List<AssumedFigure> figures, Tornado.Factor factor) {
        return figures.stream()
                .filter(each -> each.factor().equals(factor))
                .findFirst()
                .orElseThrow();
    }

    private static Unknown unknown(AssumedFigure figure, Tornado.Bar bar) {
        return new Unknown(
                figure.field(),
                figure.boat(),
                figure.name(),
                Sort.FIGURE,
                figure.write().apply(figure.base()),
                List.of(
                        new Tried(figure.write().apply(figure.low()), bounded(bar.marginAtLow())),
                        new Tried(figure.write().apply(figure.high()), bounded(bar.marginAtHigh()))));
    }

    private static Unknown unknown(AssumedChoice choice, Remeasuring again, int winner, double baseMargin) {
        List<Tried> tried = new ArrayList<>();
        tried.add(new Tried(choice.assumed(), bounded(baseMargin)));
        for (AssumedChoice.Other other : choice.others()) {
            tried.add(new Tried(other.label(), bounded(margin(again.totals(other), winner))));
        }
        return new Unknown(choice.field(), choice.boat(), choice.name(), Sort.CHOICE, choice.assumed(), tried);
    }

    private static double margin(double[] totals, int winner) {
        double other = Double.NEGATIVE_INFINITY;
        for (int boat = 0; boat < totals.length; boat++) {
            other = boat == winner ? other : Math.max(other, totals[boat]);
        }
        return totals[winner] - other;
    }

    /** A boat that is ruled out at a value has no finite margin there; where all are, nobody leads. */
    private static double bounded(double margin) {
        return Double.isNaN(margin) ? 0 : Math.clamp(margin, -RULED_OUT, RULED_OUT);
    }

    /** Counts the measurements made. */
    private static final class Progress {

        private final DoubleConsumer hear;
        private final int all;
        private int done;

        Progress(DoubleConsumer hear, int all) {
            this.hear = hear;
            this.all = all;
        }

        void step() {
            done++;
            hear.accept(Math.min(1, done / (double) all));
        }
    }

    /** Measures the boats with something moved; what is one boat's own leaves the other boats as they were. */
    private record Remeasuring(Appraiser appraiser, Measured base, int thisYear, Progress progress) {

        double[] totals(List<AssumedFigure> figures, double[] values) {
            for (int f = 0; f < values.length; f++) {
                AssumedFigure figure = figures.get(f);
                if (values[f] != figure.base()) {
                    return totals(figure.set().apply(base.facts(), values[f]));
                }
            }
            progress.step();
            return totals(base);
        }

        double[] totals(AssumedChoice.Other other) {
            return totals(other.set().apply(base.facts()));
        }

        private double[] totals(Facts facts) {
            double[] totals = totals(appraiser.measure(facts, thisYear, base, FUTURES));
            progress.step();
            return totals;
        }

        private static double[] totals(Measured measured) {
            Ranking ranking = measured.perspectives().getFirst().ranking();
            double[] totals = new double[ranking.size()];
            for (int boat = 0; boat < totals.length; boat++) {
                totals[boat] = ranking.ruledOut(boat) ? Double.NEGATIVE_INFINITY : ranking.total(boat);
            }
            return totals;
        }
    }
}
