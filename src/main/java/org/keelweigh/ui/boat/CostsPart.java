package org.keelweigh.ui.boat;

import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import java.util.List;
import org.keelweigh.appraisal.BoatFutures;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.appraisal.Situation;
import org.keelweigh.cost.CostGroup;
import org.keelweigh.cost.CostLine;
import org.keelweigh.cost.FiveYearCost;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.chart.CostFan;
import org.keelweigh.ui.chart.CostFanData;
import org.keelweigh.ui.chart.Figure;
import org.keelweigh.ui.chart.Spread;
import org.keelweigh.ui.format.FoldingTable;

/** What owning the boat costs, line by line, each line with when, how much and why. */
final class CostsPart extends BoatPart {

    private static final double M_PER_KM = 1000;

    private final Paragraph summary = new Paragraph();
    private final Div figures = Plain.row("kw-boat-figures");
    private final CostFan fan = new CostFan("Money paid so far, year by year");
    private final Div lines = Plain.row("kw-stack");
    private final Paragraph formula = Plain.soft("");

    CostsPart(BoatDesk desk) {
        super(desk);
        summary.setTestId("cost-summary");
        figures.setTestId("cost-figures");
        add(
                Plain.sheet("In short", summary, figures),
                Plain.row("kw-sheet", fan),
                lines,
                Plain.details(
                        "How it is reckoned",
                        formula,
                        Plain.soft(
                                "Uncertain amounts are counted at the mean of a PERT distribution, (low + 4·likely + high)/6, "
                                        + "within the futures; the lines show the likely amount."),
                        Plain.soft(
                                "Discounting and the equivalent yearly cost follow NIST Handbook 135. Amounts come from what was "
                                        + "typed, from findings and quotes, and from the price book, whose figures are estimates of common practice.")));
        refresh();
    }

    @Override
    void refresh() {
        BoatReport report = desk().report();
        summary.setText(sentence(report));
        figures(report);
        fan.setData(fanData(report));
        lines.removeAll();
        for (CostGroup group : CostGroup.values()) {
            group(report.cost(), group);
        }
        Situation situation = desk().measured().situation();
        formula.setText("Present value = Σ C_t / (1 + d)^t over " + situation.horizonYears()
                + " years with a real rate d of " + desk().display().percent(situation.discountRate())
                + " a year; equivalent yearly cost = PV · d / (1 − (1 + d)^−" + situation.horizonYears()
                + "). Money is counted in today's purchasing power.");
    }

    private String sentence(BoatReport report) {
        Display display = desk().display();
        BoatFutures futures = report.futures();
        int years = report.cost().horizonYears();
        String sentence = "Over " + years + " years it costs about " + display.money(futures.median())
                + " in today's money; in 8 of 10 futures between " + display.money(futures.p10()) + " and "
                + display.money(futures.p90()) + ".";
        Double budget = desk().measured().situation().trip().budget();
        if (budget == null) {
            return sentence + " No budget is set, so nothing is said about exceeding one.";
        }
        double dayOne = report.dayOneCash();
        return sentence + " Before the first launch it takes " + display.money(dayOne) + " of your "
                + display.money(budget)
                + "; the chance that all " + years + " years cost more than that sum is "
                + display.percent(futures.chanceAbove(budget)) + ".";
    }

    private void figures(BoatReport report) {
        Display display = desk().display();
        FiveYearCost cost = report.cost();
        BoatFutures futures = report.futures();
        figures.removeAll();
        figure(
                "Present value",
                display.money(cost.presentValue()),
                "the mean over " + cost.horizonYears() + (cost.horizonYears() == 1 ? " year" : " years")
                        + ", discounted");
        figure("A year", display.money(cost.equivalentYearly()), "the same, spread evenly");
        figure(
                "An outing",
                cost.perOuting().isPresent() ? display.money(cost.perOuting().getAsDouble()) : "–",
                "at " + Display.number(cost.outingsPerYear(), 0) + " outings a year");
        figure("Before the first launch", display.money(report.dayOneCash()), "cash you need at hand");
        figure("1 in 10 below", display.money(futures.p10()), "if much goes well");
        figure("Half below", display.money(futures.median()), "the middle of the futures");
        figure("1 in 10 above", display.money(futures.p90()), "if much goes wrong");
    }

    private void figure(String label, String value, String note) {
        Div figure = new Div(
                Plain.row("kw-boat-figure-label", new Text(label)),
                Plain.row("kw-boat-figure-value", new Text(value)),
                Plain.row("kw-boat-figure-note", new Text(note)));
        figure.addClassName("kw-boat-figure");
        figures.add(figure);
    }

    private void group(FiveYearCost cost, CostGroup group) {
        List<CostLine> own =
                cost.lines().stream().filter(each -> each.group() == group).toList();
        if (own.isEmpty()) {
            return;
        }
        Display display = desk().display();
        String caption =
                Plain.capital(group.label()) + ": " + display.money(cost.presentValue(group)) + " in today's money";
        lines.add(Plain.row(
                "kw-sheet",
                FoldingTable.of(
                        caption,
                        List.of("what", "when", "why", "low", "likely", "high", "times", "present value on average"),
                        own.stream().map(this::line).toList(),
                        3)));
    }

    private List<String> line(CostLine line) {
        Display display = desk().display();
        return List.of(
                Plain.capital(line.label()),
                line.timing(),
                line.why(),
                each(line, line.each().low()),
                each(line, line.each().likely()),
                each(line, line.each().high()),
                line.byWay()
                        ? display.way(M_PER_KM * line.count())
                        : Display.number(line.count(), line.count() == Math.rint(line.count()) ? 0 : 1),
                (line.income() ? "back: " : "") + display.money(Math.abs(line.presentValue())));
    }

    private String each(CostLine line, double amount) {
        Display display = desk().display();
        return line.byWay() ? display.moneyByWay(amount) : display.fineMoney(amount);
    }

    private CostFanData fanData(BoatReport report) {
        List<CostFanData.Year> years = report.futures().years().stream()
                .map(band -> new CostFanData.Year(
                        band.year(), new Spread(money(band.p10()), money(band.median()), money(band.p90()))))
                .toList();
        return new CostFanData(
                sentence(report),
                "money paid, less what came back, in today's "
                        + desk().display().currency(),
                List.of(new CostFanData.Boat(report.id().toString(), report.name(), years)));
    }

    private Figure money(double amount) {
        return new Figure(amount, desk().display().money(amount));
    }
}
