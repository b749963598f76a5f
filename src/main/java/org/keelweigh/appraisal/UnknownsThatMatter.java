package org.keelweigh.appraisal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleConsumer;
import org.keelweigh.decision.Ranking;
import org.keelweigh.decision.robust.Tornado;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Facts;

/**
 * Which of the figures that nobody gave could move the lead most: each goes alone to its plausible low and high end, and the
 * boats are measured anew.
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

    /**
     * What one unknown figure can do.
     *
     * @param field the field's path, as in {@link Assumption}
     * @param boat the boat it is about; empty for trip and people
     * @param name what it is
     * @param assumed the value that is assumed, with its unit
     * @param low its plausible low end
     * @param high its plausible high end
     */
    public record Unknown(String field, Optional<CandidateId> boat, String name, String assumed, End low, End high) {

        /** Tells by how many points the lead moves between the two ends. */
        public double swing() {
            return Math.abs(high.margin() - low.margin());
        }

        /** Tells whether another boat would lead at one of the ends. */
        public boolean changesLeader() {
            return low.margin() < 0 || high.margin() < 0;
        }

        /** Tells at which end the leader is worse off. */
        public End worse() {
            return low.margin() < high.margin() ? low : high;
        }

        /** Tells at which end the leader is better off. */
        public End better() {
            return low.margin() < high.margin() ? high : low;
        }
    }

    /**
     * One end of a plausible range.
     *
     * @param value the figure there, with its unit
     * @param margin the lead of the base case's leader there, in points; negative when another boat leads
     */
    public record End(String value, double margin) {}

    /**
     * Moves each assumed figure of a shortlist to both ends of its range.
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
        Ranking ranking = base.perspectives().getFirst().ranking();
        OptionalInt second = ranking.runnerUp();
        if (second.isEmpty() || figures.isEmpty()) {
            return Optional.empty();
        }
        Remeasuring again = new Remeasuring(appraiser, base, figures, thisYear, progress);
        Tornado tornado = Tornado.of(figures.stream().map(AssumedFigure::factor).toList(), again::totals);
        List<Unknown> unknowns = tornado.bars().stream()
                .map(bar -> unknown(figure(figures, bar.factor()), bar))
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
                figure.write().apply(figure.base()),
                new End(figure.write().apply(figure.low()), bounded(bar.marginAtLow())),
                new End(figure.write().apply(figure.high()), bounded(bar.marginAtHigh())));
    }

    /** A boat that is ruled out at an end has no finite margin there. */
    private static double bounded(double margin) {
        return Math.clamp(margin, -RULED_OUT, RULED_OUT);
    }

    /** Measures the boats with some figures moved; a figure of one boat leaves the other boats as they were. */
    private record Remeasuring(
            Appraiser appraiser, Measured base, List<AssumedFigure> figures, int thisYear, DoubleConsumer progress) {

        double[] totals(double[] values) {
            Measured measured = base;
            for (int f = 0; f < values.length; f++) {
                AssumedFigure figure = figures.get(f);
                if (values[f] != figure.base()) {
                    measured = moved(figure, values[f]);
                    progress.accept((f + 1.0) / values.length);
                }
            }
            Ranking ranking = measured.perspectives().getFirst().ranking();
            double[] totals = new double[ranking.size()];
            for (int boat = 0; boat < totals.length; boat++) {
                totals[boat] = ranking.ruledOut(boat) ? Double.NEGATIVE_INFINITY : ranking.total(boat);
            }
            return totals;
        }

        private Measured moved(AssumedFigure figure, double value) {
            return appraiser.measure(figure.set().apply(base.facts(), value), thisYear, base, FUTURES);
        }
    }
}
