package org.keelweigh.ui.compare;

import com.vaadin.flow.component.html.Paragraph;
import java.util.Comparator;
import java.util.List;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.cost.CostGroup;
import org.keelweigh.cost.CostLine;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.chart.CostBuild;
import org.keelweigh.ui.chart.CostBuildData;

/** What each boat costs over the years, heap by heap. */
class MoneySection extends Fold implements Part {

    private static final List<CostGroup> GROUPS = List.of(CostGroup.values());

    private final CostBuild build = new CostBuild("What each boat costs over the years, and what comes back");

    MoneySection() {
        super("Five years of money");
        Paragraph note = new Paragraph(
                "In today's money. The thin line tells where the sum could end up, 8 times in 10; each line of a sum stands on the boat's own page.");
        note.addClassName("kw-soft");
        put(build, note);
    }

    CostBuild build() {
        return build;
    }

    @Override
    public void show(Glance glance) {
        int years = glance.measured().situation().horizonYears();
        rename(years == 5 ? "Five years of money" : years + " years of money");
        build.setData(data(glance));
    }

    static CostBuildData data(Glance glance) {
        List<CostBuildData.Boat> boats = glance.measured().boats().stream()
                .map(each -> boat(each, glance.display()))
                .toList();
        String cheapest = boats.stream()
                .min(Comparator.comparingDouble(each -> each.net().value()))
                .map(each -> each.name() + " costs least: " + each.net().label())
                .orElse("");
        int years = glance.measured().situation().horizonYears();
        return new CostBuildData(
                cheapest + " over " + years + " years.",
                "cost over " + years + " years, " + glance.display().currency(),
                GROUPS.stream().map(CostGroup::label).toList(),
                boats);
    }

    private static CostBuildData.Boat boat(BoatReport report, Display display) {
        return new CostBuildData.Boat(
                report.id().toString(),
                report.name(),
                GROUPS.stream()
                        .map(group -> Looks.money(Math.max(0, spent(report, group)), display))
                        .toList(),
                Looks.money(Math.min(0, back(report)), display),
                Looks.money(report.cost().presentValue(), display),
                Looks.cost(report, display));
    }

    private static double spent(BoatReport report, CostGroup group) {
        return report.cost().lines().stream()
                .filter(each -> each.group() == group && !each.income())
                .mapToDouble(CostLine::presentValue)
                .sum();
    }

    private static double back(BoatReport report) {
        return report.cost().lines().stream()
                .filter(CostLine::income)
                .mapToDouble(CostLine::presentValue)
                .sum();
    }
}
