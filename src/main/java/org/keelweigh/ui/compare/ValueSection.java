package org.keelweigh.ui.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.keelweigh.appraisal.Family;
import org.keelweigh.appraisal.Ruling;
import org.keelweigh.ui.chart.Figure;
import org.keelweigh.ui.chart.ValueBars;
import org.keelweigh.ui.chart.ValueBarsData;

/** Each boat's value, made of what its families of criteria add. */
class ValueSection extends Fold implements Part {

    private final ValueBars bars = new ValueBars("How many of 100 points each boat earns, and with what");

    ValueSection() {
        super("Value, piece by piece");
        addClassName("kw-value");
        put(bars);
    }

    ValueBars bars() {
        return bars;
    }

    @Override
    public void show(Glance glance) {
        bars.setData(data(glance));
    }

    static ValueBarsData data(Glance glance) {
        List<ValueBarsData.Bar> bars =
                glance.order().stream().map(place -> bar(glance, place)).toList();
        String summary = bars.stream()
                .map(each -> each.name()
                        + (each.ruledOut() == null ? " " + each.total().label() : " ruled out"))
                .collect(Collectors.joining(", ", "Value of each boat, best first: ", "."));
        return new ValueBarsData(summary, bars);
    }

    private static ValueBarsData.Bar bar(Glance glance, int place) {
        List<ValueBarsData.Piece> pieces = new ArrayList<>();
        for (Family family : Family.values()) {
            pieces.add(piece(glance, place, family));
        }
        return new ValueBarsData.Bar(
                glance.id(place),
                glance.name(place),
                Looks.points(glance.perspective().ranking().total(place)),
                pieces,
                glance.boat(place).ruledOutBy().map(Ruling::reason).orElse(null));
    }

    private static ValueBarsData.Piece piece(Glance glance, int place, Family family) {
        List<ValueBarsData.Detail> details = new ArrayList<>();
        for (int c = 0; c < glance.yardsticks().size(); c++) {
            if (glance.yardsticks().get(c).family() == family) {
                details.add(new ValueBarsData.Detail(
                        glance.yardsticks().get(c).name(),
                        Looks.points(glance.perspective().ranking().contribution(place, c))));
            }
        }
        double sum = details.stream()
                .map(ValueBarsData.Detail::points)
                .mapToDouble(Figure::value)
                .sum();
        return new ValueBarsData.Piece(Looks.family(family), Looks.points(sum), details);
    }
}
