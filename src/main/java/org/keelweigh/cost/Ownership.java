package org.keelweigh.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.keelweigh.quantity.Estimate;

/** Adds up what owning a boat costs. */
public final class Ownership {

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
        List<Charge> charges = cheaperLaunch(Charges.of(facts, book, depreciation), facts.outingsPerYear());
        List<CostLine> lines =
                charges.stream().map(each -> line(each, facts)).toList();
        return new FiveYearCost(lines, facts.horizonYears(), facts.rate(), facts.outingsPerYear());
    }

    private static List<Charge> cheaperLaunch(List<Charge> charges, double outings) {
        Optional<Charge> fee = charges.stream().filter(Charge::launchFee).findFirst();
        Optional<Charge> pass = charges.stream().filter(Charge::pass).findFirst();
        if (fee.isEmpty() || pass.isEmpty()) {
            return charges;
        }
        boolean passWins =
                pass.get().each().likely() < fee.get().each().likely() * outings;
        Charge dropped = passWins ? fee.get() : pass.get();
        return charges.stream().filter(each -> each != dropped).toList();
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
