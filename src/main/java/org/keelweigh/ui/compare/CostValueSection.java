package org.keelweigh.ui.compare;

import com.vaadin.flow.component.html.Paragraph;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.keelweigh.appraisal.Measure;
import org.keelweigh.appraisal.TradeOff;
import org.keelweigh.decision.Frontier;
import org.keelweigh.ui.chart.CostValue;
import org.keelweigh.ui.chart.CostValueData;
import org.keelweigh.ui.chart.CostValueData.Standing;

/** What each boat costs against what it is worth apart from that. */
class CostValueSection extends Fold implements Part {

    private final CostValue picture =
            new CostValue("What more value would cost: each boat by cost and everything else");
    private final Paragraph note = new Paragraph();

    CostValueSection() {
        super("Cost against everything else");
        note.addClassName("kw-soft");
        put(picture, note);
    }

    CostValue picture() {
        return picture;
    }

    @Override
    public void show(Glance glance) {
        picture.setData(data(glance));
        note.setText(
                "A cost could be anywhere along its line: 8 times in 10 it stays within. " + tradeOffWords(glance));
    }

    private static String tradeOffWords(Glance glance) {
        OptionalDouble worth = TradeOff.moneyPerPoint(glance.measured(), glance.perspective());
        return worth.isEmpty()
                ? ""
                : "By these weights one more point of everything else is worth "
                        + glance.display().money(worth.getAsDouble()) + " over the years.";
    }

    static CostValueData data(Glance glance) {
        int column = glance.measured().yardsticks().column(Measure.COST);
        double[] costs = glance.measured().boats().stream()
                .mapToDouble(each -> each.cost().presentValue())
                .toArray();
        double[] worth = glance.perspective().worthBeside(column);
        Frontier frontier = glance.perspective().frontier(column, costs);
        int years = glance.measured().situation().horizonYears();
        return new CostValueData(
                summary(glance, frontier),
                years + "-year cost, " + glance.display().currency(),
                "value apart from cost, points",
                IntStream.range(0, costs.length)
                        .mapToObj(place -> point(glance, frontier, place, costs[place], worth[place]))
                        .toList(),
                tradeOff(glance));
    }

    private static CostValueData.Point point(Glance glance, Frontier frontier, int place, double cost, double worth) {
        return new CostValueData.Point(
                glance.id(place),
                glance.name(place),
                Looks.money(cost, glance.display()),
                Looks.points(worth),
                standing(glance, frontier, place),
                Looks.cost(glance.boat(place), glance.display()),
                null);
    }

    private static Standing standing(Glance glance, Frontier frontier, int place) {
        if (glance.perspective().ruledOut(place)) {
            return Standing.RULED_OUT;
        }
        if (glance.perspective().ranking().leader().orElse(-1) == place) {
            return Standing.LEADER;
        }
        return frontier.pareto().contains(place) ? Standing.FRONTIER : Standing.DOMINATED;
    }

    private static CostValueData.@Nullable TradeOff tradeOff(Glance glance) {
        OptionalDouble worth = TradeOff.moneyPerPoint(glance.measured(), glance.perspective());
        return worth.isEmpty()
                ? null
                : new CostValueData.TradeOff(
                        worth.getAsDouble(),
                        "one point is worth " + glance.display().money(worth.getAsDouble()));
    }

    private static String summary(Glance glance, Frontier frontier) {
        String names = frontier.pareto().stream()
                .map(glance::name)
                .reduce((a, b) -> a + ", " + b)
                .orElse("none of them");
        return "Nothing here is both cheaper and better than " + names + ".";
    }
}
