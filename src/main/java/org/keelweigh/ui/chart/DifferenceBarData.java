package org.keelweigh.ui.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * Why one boat is ahead of another.
 *
 * @param summary one sentence on what the bars show
 * @param better name of the boat ahead
 * @param other name of the boat behind
 * @param axis the unit of the differences
 * @param rows criteria in the order they are drawn
 * @param sum all differences together
 */
public record DifferenceBarData(String summary, String better, String other, String axis, List<Row> rows, Figure sum)
        implements ChartData {

    /** Far below what a bar can show, far above what rounding adds up to. */
    private static final double TOLERANCE = 0.01;

    public DifferenceBarData {
        Require.text(summary, "summary");
        Require.text(better, "the better boat's name");
        Require.text(other, "the other boat's name");
        Require.text(axis, "axis");
        rows = List.copyOf(Require.notEmpty(rows, "rows"));
        double total =
                rows.stream().mapToDouble(row -> row.difference().value()).sum();
        Require.within(sum.value(), total - TOLERANCE, total + TOLERANCE, "the sum of the differences");
    }

    /** What one criterion speaks for: above 0 the better boat, below 0 the other. */
    public record Row(String criterion, Family family, Figure difference) {
        public Row {
            Require.text(criterion, "criterion");
        }
    }

    @Override
    public NumbersTable table() {
        List<List<String>> cells = new ArrayList<>();
        rows.forEach(row -> cells.add(
                List.of(row.criterion(), row.family().words(), row.difference().label(), speaksFor(row))));
        cells.add(List.of("together", NumbersTable.NONE, sum.label(), better));
        return new NumbersTable(
                better + " against " + other, List.of("criterion", "family", axis, "speaks for"), cells);
    }

    private String speaksFor(Row row) {
        double difference = row.difference().value();
        if (difference == 0) {
            return "neither";
        }
        return difference > 0 ? better : other;
    }
}
