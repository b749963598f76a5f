package org.keelweigh.ui.chart;

import java.util.List;

/**
 * What has been paid by each year.
 *
 * @param summary one sentence on what the pictures show
 * @param axis what goes up, with its currency
 * @param boats one small picture each, all on the same scale
 */
public record CostFanData(String summary, String axis, List<Boat> boats) implements ChartData {

    public CostFanData {
        Require.text(summary, "summary");
        Require.text(axis, "axis");
        boats = List.copyOf(Require.notEmpty(boats, "boats"));
        Require.distinct(boats.stream().map(Boat::id).toList(), "boat ids");
    }

    /** One boat and its years, in order. */
    public record Boat(String id, String name, List<Year> years) {
        public Boat {
            Require.text(id, "boat id");
            Require.text(name, "boat name");
            years = List.copyOf(Require.notEmpty(years, "years"));
            for (int at = 1; at < years.size(); at++) {
                Require.check(
                        years, years.get(at - 1).year() < years.get(at).year(), "the years of " + name + " must rise");
            }
        }
    }

    /** Paid from the start to the end of a year; year 0 is the purchase. */
    public record Year(double year, Spread spread) {
        public Year {
            Require.within(year, 0, Double.MAX_VALUE, "a year");
        }
    }

    @Override
    public NumbersTable table() {
        List<String> columns = List.of("boat and year", "probably", "1 in 10 below", "1 in 10 above");
        return new NumbersTable(
                "Paid so far by year, " + axis,
                columns,
                boats.stream()
                        .flatMap(boat -> boat.years().stream().map(year -> row(boat, year)))
                        .toList());
    }

    private static List<String> row(Boat boat, Year year) {
        Spread spread = year.spread();
        return List.of(
                "%s, year %s".formatted(boat.name(), number(year.year())),
                spread.middle().label(),
                spread.low().label(),
                spread.high().label());
    }

    private static String number(double year) {
        return year == Math.rint(year) ? String.valueOf((long) year) : String.valueOf(year);
    }
}
