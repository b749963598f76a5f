package org.keelweigh.ui.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What each boat costs over the years, group by group.
 *
 * @param summary one sentence on what the bars show
 * @param axis what the length of a bar is, with its currency
 * @param groups names of the groups of cost, at most 8, in the order they are stacked
 */
public record CostBuildData(String summary, String axis, List<String> groups, List<Boat> boats) implements ChartData {

    /** As many groups as there are looks to tell apart. */
    private static final int MOST_GROUPS = 8;

    public CostBuildData {
        Require.text(summary, "summary");
        Require.text(axis, "axis");
        groups = List.copyOf(Require.notEmpty(groups, "groups"));
        Require.distinct(groups, "groups");
        Require.within(groups.size(), 1, MOST_GROUPS, "the number of groups");
        boats = List.copyOf(Require.notEmpty(boats, "boats"));
        Require.distinct(boats.stream().map(Boat::id).toList(), "boat ids");
        for (Boat boat : boats) {
            Require.check(
                    boat,
                    boat.amounts().size() == groups.size(),
                    boat.name() + " must have " + groups.size() + " amounts, had "
                            + boat.amounts().size());
        }
    }

    /**
     * One boat.
     *
     * @param amounts one per group, none below 0
     * @param resale what selling it brings, at most 0 as it lowers the cost
     * @param net what remains to pay
     * @param spread where the net cost could end up, or null when unknown
     */
    public record Boat(
            String id,
            String name,
            List<Figure> amounts,
            Figure resale,
            Figure net,
            @Nullable Spread spread) {
        public Boat {
            Require.text(id, "boat id");
            Require.text(name, "boat name");
            amounts = List.copyOf(amounts);
            amounts.forEach(each -> Require.within(each.value(), 0, Double.MAX_VALUE, "an amount of " + name));
            Require.within(resale.value(), -Double.MAX_VALUE, 0, "the resale of " + name);
        }
    }

    @Override
    public NumbersTable table() {
        List<List<String>> rows = new ArrayList<>();
        IntStream.range(0, groups.size())
                .mapToObj(
                        at -> row(groups.get(at), boat -> boat.amounts().get(at).label()))
                .forEach(rows::add);
        rows.add(row("back when sold", boat -> boat.resale().label()));
        rows.add(row("remains to pay", boat -> boat.net().label()));
        if (boats.stream().anyMatch(boat -> boat.spread() != null)) {
            rows.add(row("8 times in 10", CostBuildData::range));
        }
        return new NumbersTable("Cost by group, " + axis, row("group", Boat::name), rows);
    }

    private static String range(Boat boat) {
        return boat.spread() == null ? NumbersTable.NONE : boat.spread().words();
    }

    private List<String> row(String heading, Function<Boat, String> cell) {
        List<String> cells = new ArrayList<>(List.of(heading));
        boats.forEach(boat -> cells.add(cell.apply(boat)));
        return cells;
    }
}
