package org.keelweigh.ui.chart;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Who would lead at every weight of each criterion.
 *
 * @param summary one sentence on what the strips show
 * @param winners every boat that leads somewhere, the present leader first
 */
public record WeightStripsData(String summary, List<Winner> winners, List<Strip> strips) implements ChartData {

    private static final double ALL = 100;
    private static final double GAP = 1e-6;

    public WeightStripsData {
        Require.text(summary, "summary");
        winners = List.copyOf(Require.notEmpty(winners, "winners"));
        strips = List.copyOf(Require.notEmpty(strips, "strips"));
        List<String> ids = winners.stream().map(Winner::id).toList();
        Require.distinct(ids, "boat ids");
        for (Strip strip : strips) {
            strip.segments()
                    .forEach(each -> Require.check(
                            each, ids.contains(each.winnerId()), "no winner has the id " + each.winnerId()));
        }
    }

    /** A boat that leads somewhere. */
    public record Winner(String id, String name) {
        public Winner {
            Require.text(id, "boat id");
            Require.text(name, "boat name");
        }
    }

    /**
     * One criterion.
     *
     * @param now its present share of the weight in percent
     * @param segments from 0 to 100 percent without a gap
     * @param nextBorder how far it is to the nearest change, in words
     */
    public record Strip(String criterion, Figure now, List<Segment> segments, String nextBorder) {
        public Strip {
            Require.text(criterion, "criterion");
            Require.within(now.value(), 0, ALL, "the weight in percent of " + criterion);
            segments = List.copyOf(Require.notEmpty(segments, "segments"));
            Require.text(nextBorder, "next border");
            double end = 0;
            for (Segment segment : segments) {
                Require.within(
                        segment.fromPercent(),
                        end - GAP,
                        end + GAP,
                        "the start in percent of a segment of " + criterion);
                end = segment.toPercent();
            }
            Require.within(end, ALL - GAP, ALL + GAP, "the end in percent of the last segment of " + criterion);
        }
    }

    /** A stretch of weights with one winner. */
    public record Segment(double fromPercent, double toPercent, String winnerId) {
        public Segment {
            Require.within(fromPercent, 0, toPercent, "the start of a segment in percent");
            Require.within(toPercent, fromPercent, ALL, "the end of a segment in percent");
        }
    }

    @Override
    public NumbersTable table() {
        List<String> columns = List.of("criterion", "weight now", "who leads at which weight", "next change");
        return new NumbersTable(
                "The leader at each weight",
                columns,
                strips.stream().map(this::row).toList());
    }

    private List<String> row(Strip strip) {
        String leaders = strip.segments().stream().map(this::words).collect(Collectors.joining("; "));
        return List.of(strip.criterion(), strip.now().label(), leaders, strip.nextBorder());
    }

    private String words(Segment segment) {
        return String.format(
                Locale.UK,
                "%s from %.0f to %.0f %%",
                name(segment.winnerId()),
                segment.fromPercent(),
                segment.toPercent());
    }

    private String name(String winnerId) {
        return winners.stream()
                .filter(each -> each.id().equals(winnerId))
                .map(Winner::name)
                .findFirst()
                .orElseThrow();
    }
}
