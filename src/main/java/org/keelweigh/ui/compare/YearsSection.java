package org.keelweigh.ui.compare;

import java.util.Comparator;
import java.util.List;
import org.keelweigh.appraisal.BoatFutures;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.chart.CostFan;
import org.keelweigh.ui.chart.CostFanData;
import org.keelweigh.ui.chart.Spread;

/** What each boat has cost by each year, and how far that could stray. */
class YearsSection extends Fold implements Part {

    private final CostFan fan = new CostFan("What has been paid by the end of each year, and how far it could stray");

    YearsSection() {
        super("Year by year");
        put(fan);
    }

    CostFan fan() {
        return fan;
    }

    @Override
    public void show(Glance glance) {
        fan.setData(data(glance));
    }

    static CostFanData data(Glance glance) {
        List<BoatReport> boats = glance.measured().boats();
        String steadiest = boats.stream()
                .min(Comparator.comparingDouble(
                        each -> each.futures().p90() - each.futures().p10()))
                .map(BoatReport::name)
                .orElse("");
        return new CostFanData(
                "The cost of " + steadiest + " strays least.",
                "paid so far, " + glance.display().currency(),
                boats.stream().map(each -> boat(each, glance.display())).toList());
    }

    private static CostFanData.Boat boat(BoatReport report, Display display) {
        return new CostFanData.Boat(
                report.id().toString(),
                report.name(),
                report.futures().years().stream()
                        .map(each -> new CostFanData.Year(each.year(), spread(each, display)))
                        .toList());
    }

    private static Spread spread(BoatFutures.YearBand band, Display display) {
        return new Spread(
                Looks.money(band.p10(), display),
                Looks.money(band.median(), display),
                Looks.money(band.p90(), display));
    }
}
