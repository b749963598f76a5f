package org.keelweigh.ui.chart;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The chance that a boat is the best choice, against its price.
 *
 * @param summary one sentence on what the curve shows
 * @param axis what lies along, with its currency
 * @param points prices in rising order
 * @param marks prices to be shown on the curve
 */
public record OfferCurveData(String summary, String axis, List<Point> points, List<Mark> marks) implements ChartData {

    private static final double ALL = 100;
    private static final int FEWEST_POINTS = 2;

    public OfferCurveData {
        Require.text(summary, "summary");
        Require.text(axis, "axis");
        points = List.copyOf(points);
        marks = List.copyOf(marks);
        Require.within(points.size(), FEWEST_POINTS, Integer.MAX_VALUE, "the number of points");
        for (int at = 1; at < points.size(); at++) {
            double before = points.get(at - 1).price().value();
            Require.check(before, before < points.get(at).price().value(), "prices must rise after " + before);
        }
    }

    /** What a marked price is. */
    public enum Kind {
        OPENING,
        FAIR,
        WALK_AWAY,
        ASKING
    }

    /** A price and the chance in percent that the boat is best at it. */
    public record Point(Figure price, double chancePercent) {
        public Point {
            Require.within(chancePercent, 0, ALL, "the chance in percent at " + price.label());
        }
    }

    /** A price with a name. */
    public record Mark(Kind kind, String words, Figure price, double chancePercent) {
        public Mark {
            Require.text(words, "the words of a mark");
            Require.within(chancePercent, 0, ALL, "the chance in percent at " + price.label());
        }
    }

    @Override
    public NumbersTable table() {
        Stream<List<String>> marked = marks.stream().map(each -> row(each.words(), each.price(), each.chancePercent()));
        Stream<List<String>> curve =
                points.stream().map(each -> row("on the curve", each.price(), each.chancePercent()));
        return new NumbersTable(
                "Chance of being the best choice",
                List.of("what", axis, "best in"),
                Stream.concat(marked, curve).toList());
    }

    private static List<String> row(String what, Figure price, double chancePercent) {
        return List.of(what, price.label(), String.format(Locale.UK, "%.0f of 100", chancePercent));
    }
}
