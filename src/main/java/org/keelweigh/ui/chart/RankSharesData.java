package org.keelweigh.ui.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How often each boat takes each place.
 *
 * @param summary one sentence on what the bars show
 * @param boats in the order they are drawn, all with the same number of places
 */
public record RankSharesData(String summary, List<Boat> boats) implements ChartData {

    private static final double ALL = 100;
    /** Shares may be rounded to whole percent, each by half a percent. */
    private static final double ROUNDING = 0.5;

    public RankSharesData {
        Require.text(summary, "summary");
        boats = List.copyOf(Require.notEmpty(boats, "boats"));
        Require.distinct(boats.stream().map(Boat::id).toList(), "boat ids");
        int places = boats.getFirst().sharesPercent().size();
        for (Boat boat : boats) {
            int count = boat.sharesPercent().size();
            Require.check(boat, count == places, boat.name() + " must have " + places + " shares, had " + count);
        }
    }

    /**
     * One boat.
     *
     * @param sharesPercent share of futures in which it is first, second and so on; together 100
     * @param firstLabel how often it comes first, in words
     */
    public record Boat(String id, String name, List<Double> sharesPercent, String firstLabel) {
        public Boat {
            Require.text(id, "boat id");
            Require.text(name, "boat name");
            Require.text(firstLabel, "the first-place label of " + name);
            sharesPercent = List.copyOf(Require.notEmpty(sharesPercent, "shares"));
            sharesPercent.forEach(each -> Require.within(each, 0, ALL, "a share in percent of " + name));
            double sum = sharesPercent.stream().mapToDouble(Double::doubleValue).sum();
            double slack = ROUNDING * sharesPercent.size();
            Require.within(sum, ALL - slack, ALL + slack, "the sum of the shares in percent of " + name);
        }
    }

    @Override
    public NumbersTable table() {
        List<String> columns = new ArrayList<>(List.of("boat"));
        IntStream.rangeClosed(1, boats.getFirst().sharesPercent().size())
                .forEach(place -> columns.add("place " + place));
        return new NumbersTable(
                "Share of futures in each place",
                columns,
                boats.stream().map(RankSharesData::row).toList());
    }

    private static List<String> row(Boat boat) {
        return Stream.concat(
                        Stream.of(boat.name()),
                        boat.sharesPercent().stream().map(share -> String.format(Locale.UK, "%.0f %%", share)))
                .toList();
    }
}
