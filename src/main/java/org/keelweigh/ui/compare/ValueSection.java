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
    public void show(Outlook outlook) {
        bars.setData(data(outlook));
    }

    static ValueBarsData data(Outlook outlook) {
        List<ValueBarsData.Bar> bars =
                outlook.order().stream().map(place -> bar(outlook, place)).toList();
        String summary = bars.stream()
                .map(each -> each.name()
                        + (each.ruledOut() == null ? " " + each.total().label() : " ruled out"))
                .collect(Collectors.joining(", ", "Value of each boat, best first: ", "."));
        return new ValueBarsData(summary, bars);
    }

    private static ValueBarsData.Bar bar(Outlook outlook, int place) {
        List<ValueBarsData.Piece> pieces = new ArrayList<>();
        for (Family family : Family.values()) {
            pieces.add(piece(outlook, place, family));
        }
        return new ValueBarsData.Bar(
                outlook.id(place),
                outlook.name(place),
                Looks.points(outlook.perspective().ranking().total(place)),
                pieces,
                outlook.boat(place).ruledOutBy().map(Ruling::reason).orElse(null));
    }

    private static ValueBarsData.Piece piece(Outlook outlook, int place, Family family) {
        List<ValueBarsData.Detail> details = new ArrayList<>();
        for (int c = 0; c < outlook.yardsticks().size(); c++) {
            if (outlook.yardsticks().get(c).family() == family) {
                details.add(new ValueBarsData.Detail(
                        outlook.yardsticks().get(c).name(),
                        Looks.points(outlook.perspective().ranking().contribution(place, c))));
            }
        }
        double sum = details.stream()
                .map(ValueBarsData.Detail::points)
                .mapToDouble(Figure::value)
                .sum();
        return new ValueBarsData.Piece(Looks.family(family), Looks.points(sum), details);
    }
}
