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
    public void show(Outlook outlook) {
        picture.setData(data(outlook));
        note.setText(
                "A cost could be anywhere along its line: 8 times in 10 it stays within. " + tradeOffWords(outlook));
    }

    private static String tradeOffWords(Outlook outlook) {
        OptionalDouble worth = TradeOff.moneyPerPoint(outlook.measured(), outlook.perspective());
        return worth.isEmpty()
                ? ""
                : "By these weights one more point of everything else is worth "
                        + outlook.display().money(worth.getAsDouble()) + " over the years.";
    }

    static CostValueData data(Outlook outlook) {
        int column = outlook.measured().yardsticks().column(Measure.COST);
        double[] costs = outlook.measured().boats().stream()
                .mapToDouble(each -> each.cost().presentValue())
                .toArray();
        double[] worth = outlook.perspective().worthBeside(column);
        Frontier frontier = outlook.perspective().frontier(column, costs);
        int years = outlook.measured().situation().horizonYears();
        return new CostValueData(
                summary(outlook, frontier),
                years + "-year cost, " + outlook.display().currency(),
                "value apart from cost, points",
                IntStream.range(0, costs.length)
                        .mapToObj(place -> point(outlook, frontier, place, costs[place], worth[place]))
                        .toList(),
                tradeOff(outlook));
    }

    private static CostValueData.Point point(Outlook outlook, Frontier frontier, int place, double cost, double worth) {
        return new CostValueData.Point(
                outlook.id(place),
                outlook.name(place),
                Looks.money(cost, outlook.display()),
                Looks.points(worth),
                standing(outlook, frontier, place),
                Looks.cost(outlook.boat(place), outlook.display()),
                null);
    }

    private static Standing standing(Outlook outlook, Frontier frontier, int place) {
        if (outlook.perspective().ruledOut(place)) {
            return Standing.RULED_OUT;
        }
        if (outlook.perspective().ranking().leader().orElse(-1) == place) {
            return Standing.LEADER;
        }
        return frontier.pareto().contains(place) ? Standing.FRONTIER : Standing.DOMINATED;
    }

    private static CostValueData.@Nullable TradeOff tradeOff(Outlook outlook) {
        OptionalDouble worth = TradeOff.moneyPerPoint(outlook.measured(), outlook.perspective());
        return worth.isEmpty()
                ? null
                : new CostValueData.TradeOff(
                        worth.getAsDouble(),
                        "one point is worth " + outlook.display().money(worth.getAsDouble()));
    }

    private static String summary(Outlook outlook, Frontier frontier) {
        String names = frontier.pareto().stream()
                .map(outlook::name)
                .reduce((a, b) -> a + ", " + b)
                .orElse("none of them");
        return "Nothing here is both cheaper and better than " + names + ".";
    }
}
