package org.keelweigh.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.keelweigh.quantity.Estimate;

/** Adds up what owning a boat costs. */
public final class Ownership {

    private static final int MIDPOINTS = 64;

    private Ownership() {}

    /**
     * Works out the lines of the cost of owning a boat. Payments fall at the beginning (year 0) or at the end of a
     * year; the day fee or the year's pass for launching counts, whichever is likely cheaper.
     *
     * @param facts the boat and its use
     * @param book what things cost, in the same currency as the price
     * @param depreciation how boats lose value, in that currency
     * @throws IllegalArgumentException if a typed cost has the id of a price-book item that counts already
     */
    public static FiveYearCost cost(OwnershipFacts facts, PriceBook book, Depreciation depreciation) {
        List<Charge> charges = Charges.of(facts, book, depreciation);
        Optional<Charge> fee = charges.stream().filter(Charge::launchFee).findFirst();
        Optional<Charge> pass = charges.stream().filter(Charge::pass).findFirst();
        List<CostLine> lines = new ArrayList<>();
        for (Charge each : charges) {
            boolean launching = each.launchFee() || each.pass();
            if (!launching || fee.isEmpty() || pass.isEmpty()) {
                lines.add(line(each, facts));
            } else if (each.launchFee()) {
                lines.add(launching(each, pass.get(), facts));
            }
        }
        return new FiveYearCost(lines, facts.horizonYears(), facts.rate(), facts.outingsPerYear());
    }

    /** Makes the line of whatever launching is likely cheaper, with the mean, least and most of the cheaper each time. */
    private static CostLine launching(Charge fee, Charge pass, OwnershipFacts facts) {
        CostLine fees = line(fee, facts);
        CostLine passes = line(pass, facts);
        CostLine likelier = passes.total() < fees.total() ? passes : fees;
        double years = fee.presentFactor(facts.rate());
        double mean = years * meanCheaper(fee.each().times(facts.outingsPerYear()), pass.each());
        return likelier.ranging(
                mean,
                Math.min(fees.leastPresentValue(), passes.leastPresentValue()),
                Math.min(fees.mostPresentValue(), passes.mostPresentValue()));
    }

    /** Works out the mean of the lower of two independent amounts, by the midpoint rule in both chances. */
    private static double meanCheaper(Estimate one, Estimate other) {
        PertTable ones = new Pert(one).table();
        PertTable others = new Pert(other).table();
        double sum = 0;
        for (int i = 0; i < MIDPOINTS; i++) {
            double x = ones.quantile((i + 0.5) / MIDPOINTS);
            for (int j = 0; j < MIDPOINTS; j++) {
                sum += Math.min(x, others.quantile((j + 0.5) / MIDPOINTS));
            }
        }
        return sum / (MIDPOINTS * MIDPOINTS);
    }

    private static CostLine line(Charge charge, OwnershipFacts facts) {
        Estimate each = charge.ofPrice() ? charge.each().times(facts.price()) : charge.each();
        double times = charge.multiplier(facts.outingsPerYear());
        List<CashFlow> flows = new ArrayList<>();
        double count = 0;
        for (int year = 0; year < charge.byYear().length; year++) {
            double here = times * charge.byYear()[year];
            if (here != 0) {
                flows.add(new CashFlow(year, here * each.likely()));
                count += here;
            }
        }
        double factor = times * charge.presentFactor(facts.rate());
        return new CostLine(
                charge.item().id(),
                charge.item().label(),
                charge.item().group(),
                Charges.timing(charge),
                each,
                Math.abs(count),
                charge.item().rule().byWay(),
                charge.income(),
                flows,
                count * each.likely(),
                factor * each.likely(),
                factor * (charge.income() ? each.likely() : each.mean()),
                factor * (charge.income() ? each.high() : each.low()),
                factor * (charge.income() ? each.low() : each.high()),
                charge.item().why());
    }
}
