package org.keelweigh.ui.chart;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How far each factor alone could move the lead.
 *
 * @param summary one sentence on what the bars show
 * @param axis what the lead is, with its unit
 * @param now the lead with every factor at its likely value
 * @param bars widest swing first
 */
public record TornadoData(String summary, String axis, Figure now, List<Bar> bars) implements ChartData {

    public TornadoData {
        Require.text(summary, "summary");
        Require.text(axis, "axis");
        bars = List.copyOf(Require.notEmpty(bars, "bars"));
    }

    /**
     * One factor.
     *
     * @param low the smallest lead it could bring
     * @param lowMeans what the factor would be then
     * @param high the largest lead it could bring
     * @param highMeans what the factor would be then
     * @param flip at which value the choice changes, in words, or null when it never does
     */
    public record Bar(
            String factor,
            Figure low,
            String lowMeans,
            Figure high,
            String highMeans,
            @Nullable String flip) {
        public Bar {
            Require.text(factor, "factor");
            Require.text(lowMeans, "the low meaning of " + factor);
            Require.text(highMeans, "the high meaning of " + factor);
            Require.check(
                    low,
                    low.value() <= high.value(),
                    "the low lead of " + factor + " must not exceed the high one, was " + low.value() + " over "
                            + high.value());
        }
    }

    @Override
    public NumbersTable table() {
        List<String> columns = List.of("factor", "smallest lead", "when", "largest lead", "when", "choice changes");
        return new NumbersTable(
                "Swing of the " + axis + ", now " + now.label(),
                columns,
                bars.stream().map(TornadoData::row).toList());
    }

    private static List<String> row(Bar bar) {
        return List.of(
                bar.factor(),
                bar.low().label(),
                bar.lowMeans(),
                bar.high().label(),
                bar.highMeans(),
                bar.flip() == null ? "never" : bar.flip());
    }
}
