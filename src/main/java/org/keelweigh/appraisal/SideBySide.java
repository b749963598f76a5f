package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.keelweigh.boat.Figure;
import org.keelweigh.decision.Direction;
import org.keelweigh.shortlist.Display;

/** The boats' measures beside one another, the best and the worst of each told. Boats that are ruled out are not judged. */
public final class SideBySide {

    /** Measures closer than this share of the larger one read alike and are called alike. */
    private static final double ALIKE = 1e-6;

    /** How a boat stands in a row. */
    public enum Mark {
        BEST("best"),
        WORST("worst"),
        ALIKE("all alike"),
        PLAIN("");

        private final String words;

        Mark(String words) {
            this.words = words;
        }

        /** Tells it in words; nothing for a boat that is neither best nor worst. */
        public String words() {
            return words;
        }
    }

    /**
     * One boat's cell.
     *
     * @param text the measure with its unit
     * @param mark how it stands
     * @param assumed whether nobody said and it is taken as usual
     */
    public record Cell(String text, Mark mark, boolean assumed) {}

    /**
     * One measure.
     *
     * @param label what is measured
     * @param meaning what it means, as a phrase; may be blank
     * @param family the family it belongs to
     * @param cells one for each boat, in their order
     */
    public record Row(String label, String meaning, Family family, List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    private final Measured measured;
    private final Perspective perspective;
    private final Display display;
    private final List<Row> rows = new ArrayList<>();

    private SideBySide(Measured measured, Perspective perspective) {
        this.measured = measured;
        this.perspective = perspective;
        this.display = measured.situation().display();
    }

    /** Puts the boats beside one another as one person sees them; together, every person's own measures are told. */
    public static List<Row> of(Measured measured, Perspective perspective) {
        SideBySide table = new SideBySide(measured, perspective);
        table.facts();
        List<Yardstick> yardsticks = measured.yardsticks().all();
        for (int c = 0; c < yardsticks.size(); c++) {
            table.judged(yardsticks.get(c), c);
        }
        table.rows.sort(Comparator.comparing(Row::family));
        return List.copyOf(table.rows);
    }

    private void facts() {
        figure(
                "Price",
                "what is asked, or what is usual where nobody asked yet",
                Family.MONEY,
                BoatReport::price,
                display::money);
        plain("Cash before the first launch", Family.MONEY, BoatReport::dayOneCash, display::money);
        figure("Length", "", Family.WATER, each -> each.boat().lengthM(), display::length);
        figure("Beam", "", Family.WATER, each -> each.boat().beamM(), display::breadth);
        plain("On the cart or in the bag", Family.LAND, each -> each.cart().massKg(), display::mass);
        plain("Pull at worst", Family.LAND, each -> each.cart().worstPullN(), display::force);
    }

    private void figure(
            String label,
            String meaning,
            Family family,
            Function<BoatReport, Figure> figure,
            Function<Double, String> write) {
        rows.add(new Row(
                label,
                meaning,
                family,
                measured.boats().stream()
                        .map(figure)
                        .map(each -> new Cell(write.apply(each.value()), Mark.PLAIN, each.isAssumed()))
                        .toList()));
    }

    private void plain(
            String label, Family family, ToDoubleFunction<BoatReport> figure, Function<Double, String> write) {
        List<Double> all = measured.boats().stream().map(figure::applyAsDouble).toList();
        rows.add(new Row(label, "", family, cells(all.stream().map(write).toList(), all, Direction.LESS_IS_BETTER)));
    }

    private void judged(Yardstick yardstick, int column) {
        List<Integer> people = peopleFor(yardstick);
        for (int person : people) {
            List<Double> measures = measured.boats().stream()
                    .map(each -> each.measures().get(person).get(column))
                    .toList();
            String label = people.size() == 1
                    ? yardstick.name()
                    : yardstick.name() + " · "
                            + measured.situation().people().get(person).name();
            List<String> texts = measures.stream()
                    .map(each -> yardstick.unit().write(each, display))
                    .toList();
            rows.add(new Row(
                    label,
                    yardstick.meaning(),
                    yardstick.family(),
                    cells(texts, measures, yardstick.criterion().direction())));
        }
    }

    private List<Integer> peopleFor(Yardstick yardstick) {
        List<Participant> people = measured.situation().people();
        List<Integer> deciding = IntStream.range(0, people.size())
                .filter(p -> measured.situation().deciders().contains(people.get(p)))
                .filter(p ->
                        perspective.person().isEmpty() || people.get(p).id().equals(perspective.person()))
                .boxed()
                .toList();
        return yardstick.personal() ? deciding : deciding.subList(0, 1);
    }

    private List<Cell> cells(List<String> texts, List<Double> measures, Direction direction) {
        double sign = direction == Direction.MORE_IS_BETTER ? 1 : -1;
        double best = Double.NEGATIVE_INFINITY;
        double worst = Double.POSITIVE_INFINITY;
        for (int b = 0; b < measures.size(); b++) {
            if (!perspective.ruledOut(b)) {
                best = Math.max(best, sign * measures.get(b));
                worst = Math.min(worst, sign * measures.get(b));
            }
        }
        List<Cell> cells = new ArrayList<>();
        for (int b = 0; b < measures.size(); b++) {
            Mark mark = perspective.ruledOut(b) ? Mark.PLAIN : mark(sign * measures.get(b), best, worst);
            cells.add(new Cell(texts.get(b), mark, false));
        }
        return cells;
    }

    private static Mark mark(double measure, double best, double worst) {
        double same = ALIKE * Math.max(1e-9, Math.max(Math.abs(best), Math.abs(worst)));
        if (best - worst <= same) {
            return Mark.ALIKE;
        }
        if (best - measure <= same) {
            return Mark.BEST;
        }
        return measure - worst <= same ? Mark.WORST : Mark.PLAIN;
    }
}
