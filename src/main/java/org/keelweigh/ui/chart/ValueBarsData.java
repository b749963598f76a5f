package org.keelweigh.ui.chart;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Boats in order of their value.
 *
 * @param summary one sentence on what the bars show
 * @param bars best boat first, ruled-out boats after all others
 */
public record ValueBarsData(String summary, List<Bar> bars) implements ChartData {

    private static final double ALL_POINTS = 100;

    public ValueBarsData {
        Require.text(summary, "summary");
        bars = List.copyOf(Require.notEmpty(bars, "bars"));
        Require.distinct(bars.stream().map(Bar::id).toList(), "boat ids");
        boolean ruledOut = false;
        for (Bar bar : bars) {
            Require.check(
                    bar, bar.ruledOut() != null || !ruledOut, bar.name() + " must come before the ruled-out boats");
            ruledOut = bar.ruledOut() != null;
        }
    }

    /**
     * One boat.
     *
     * @param total its value, 0 to 100 points
     * @param pieces at most one per family
     * @param ruledOut why the boat cannot be chosen, or null when it can
     */
    public record Bar(
            String id,
            String name,
            Figure total,
            List<Piece> pieces,
            @Nullable String ruledOut) {
        public Bar {
            Require.text(id, "boat id");
            Require.text(name, "boat name");
            Require.within(total.value(), 0, ALL_POINTS, "the total points of " + name);
            pieces = List.copyOf(pieces);
            Require.distinct(pieces.stream().map(each -> each.family().words()).toList(), "families of " + name);
        }

        private Optional<Piece> piece(Family family) {
            return pieces.stream().filter(each -> each.family() == family).findFirst();
        }

        private Optional<Figure> points(Family family, String criterion) {
            return piece(family).stream()
                    .flatMap(each -> each.details().stream())
                    .filter(each -> each.criterion().equals(criterion))
                    .map(Detail::points)
                    .findFirst();
        }
    }

    /**
     * What one family adds to a boat's value.
     *
     * @param details the criteria it is made of; may be empty
     */
    public record Piece(Family family, Figure points, List<Detail> details) {
        public Piece {
            Require.within(points.value(), 0, ALL_POINTS, "the points for " + family.words());
            details = List.copyOf(details);
        }
    }

    /** What one criterion adds. */
    public record Detail(String criterion, Figure points) {
        public Detail {
            Require.text(criterion, "criterion");
            Require.within(points.value(), 0, ALL_POINTS, "the points for " + criterion);
        }
    }

    @Override
    public NumbersTable table() {
        List<List<String>> rows = new ArrayList<>();
        for (Family family : Family.values()) {
            rows.add(row(family.words(), bar -> bar.piece(family).map(Piece::points)));
            for (String criterion : criteria(family)) {
                rows.add(row(family.words() + ": " + criterion, bar -> bar.points(family, criterion)));
            }
        }
        rows.add(row("total", bar -> Optional.of(bar.total())));
        if (bars.stream().anyMatch(bar -> bar.ruledOut() != null)) {
            rows.add(cells("ruled out", bar -> Optional.ofNullable(bar.ruledOut())));
        }
        return new NumbersTable("Value by boat", cells("part", bar -> Optional.of(bar.name())), rows);
    }

    private Set<String> criteria(Family family) {
        Set<String> criteria = new LinkedHashSet<>();
        for (Bar bar : bars) {
            bar.piece(family).ifPresent(piece -> piece.details().forEach(each -> criteria.add(each.criterion())));
        }
        return criteria;
    }

    private List<String> row(String heading, Function<Bar, Optional<Figure>> figure) {
        return cells(heading, bar -> figure.apply(bar).map(Figure::label));
    }

    private List<String> cells(String heading, Function<Bar, Optional<String>> cell) {
        List<String> cells = new ArrayList<>(List.of(heading));
        bars.forEach(bar -> cells.add(cell.apply(bar).orElse(NumbersTable.NONE)));
        return cells;
    }
}
