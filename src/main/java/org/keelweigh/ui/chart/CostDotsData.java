package org.keelweigh.ui.chart;

import java.util.List;
import java.util.Locale;

/**
 * Equally likely costs of each boat.
 *
 * @param summary one sentence on what the dots show
 * @param axis what lies along, with its currency
 */
public record CostDotsData(String summary, String axis, List<Boat> boats) implements ChartData {

    public CostDotsData {
        Require.text(summary, "summary");
        Require.text(axis, "axis");
        boats = List.copyOf(Require.notEmpty(boats, "boats"));
        Require.distinct(boats.stream().map(Boat::id).toList(), "boat ids");
    }

    /**
     * One boat.
     *
     * @param dots equally likely costs in rising order, usually 20
     * @param middle half of the futures cost less
     * @param words what the dots say, in words
     */
    public record Boat(String id, String name, List<Double> dots, Figure middle, String words) {
        public Boat {
            Require.text(id, "boat id");
            Require.text(name, "boat name");
            Require.text(words, "the words for " + name);
            dots = List.copyOf(Require.notEmpty(dots, "dots"));
            for (int at = 0; at < dots.size(); at++) {
                Require.finite(dots.get(at), "a dot of " + name);
                Require.check(dots, at == 0 || dots.get(at - 1) <= dots.get(at), "the dots of " + name + " must rise");
            }
        }
    }

    @Override
    public NumbersTable table() {
        return new NumbersTable(
                "Spread of the " + axis,
                List.of("boat", "half of the futures below", "lowest dot", "highest dot", "in words"),
                boats.stream().map(CostDotsData::row).toList());
    }

    private static List<String> row(Boat boat) {
        return List.of(
                boat.name(),
                boat.middle().label(),
                String.format(Locale.UK, "%,.0f", boat.dots().getFirst()),
                String.format(Locale.UK, "%,.0f", boat.dots().getLast()),
                boat.words());
    }
}
