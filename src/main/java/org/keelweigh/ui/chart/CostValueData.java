package org.keelweigh.ui.chart;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Boats by cost and by everything else.
 *
 * @param summary one sentence on what the picture shows
 * @param costAxis what lies along, with its unit
 * @param valueAxis what goes up, with its unit
 * @param tradeOff how much one point is worth, or null to draw no such line
 */
public record CostValueData(
        String summary,
        String costAxis,
        String valueAxis,
        List<Point> points,
        @Nullable TradeOff tradeOff) implements ChartData {

    public CostValueData {
        Require.text(summary, "summary");
        Require.text(costAxis, "cost axis");
        Require.text(valueAxis, "value axis");
        points = List.copyOf(Require.notEmpty(points, "points"));
        Require.distinct(points.stream().map(Point::id).toList(), "boat ids");
        long leaders = points.stream()
                .filter(each -> each.standing() == Standing.LEADER)
                .count();
        Require.check(leaders, leaders <= 1, "at most one boat can lead, found " + leaders);
    }

    /** How a boat stands among the others. */
    public enum Standing {
        LEADER("leads"),
        FRONTIER("nothing is both cheaper and better"),
        DOMINATED("another boat is cheaper and better"),
        RULED_OUT("ruled out");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * One boat.
     *
     * @param costSpread where the cost could end up, or null when only one figure is known
     * @param valueSpread where the value could end up, or null when only one figure is known
     */
    public record Point(
            String id,
            String name,
            Figure cost,
            Figure value,
            Standing standing,
            @Nullable Spread costSpread,
            @Nullable Spread valueSpread) {
        public Point {
            Require.text(id, "boat id");
            Require.text(name, "boat name");
        }
    }

    /**
     * The exchange rate between money and value.
     *
     * @param costPerPoint money that one point is worth, above 0
     * @param label the same in words
     */
    public record TradeOff(double costPerPoint, String label) {
        public TradeOff {
            Require.positive(costPerPoint, "the cost per point");
            Require.text(label, "label");
        }
    }

    @Override
    public NumbersTable table() {
        List<String> columns = List.of("boat", costAxis, "cost could be", valueAxis, "value could be", "standing");
        return new NumbersTable(
                "Cost and value by boat",
                columns,
                points.stream().map(CostValueData::row).toList());
    }

    private static List<String> row(Point point) {
        return List.of(
                point.name(),
                point.cost().label(),
                range(point.costSpread()),
                point.value().label(),
                range(point.valueSpread()),
                point.standing().words());
    }

    private static String range(@Nullable Spread spread) {
        return spread == null
                ? NumbersTable.NONE
                : spread.low().label() + " to " + spread.high().label();
    }
}
