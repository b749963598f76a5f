package org.keelweigh.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.keelweigh.quantity.Estimate;

/** Adds up what owning a boat costs. */
public final class Ownership {

    private static final int MIDPOINTS = 32;

    private final OwnershipFacts facts;
    private final double[] shares;

    private Ownership(OwnershipFacts facts) {
        this.facts = facts;
        this.shares = midpoints(facts.outingsSpread());
    }

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
        return new Ownership(facts).cost(Charges.of(facts, book, depreciation));
    }

    private FiveYearCost cost(List<Charge> charges) {
        Optional<Charge> fee = charges.stream().filter(Charge::launchFee).findFirst();
        Optional<Charge> pass = charges.stream().filter(Charge::pass).findFirst();
        List<CostLine> lines = new ArrayList<>();
        for (Charge each : charges) {
            boolean launching = each.launchFee() || each.pass();
            if (!launching || fee.isEmpty() || pass.isEmpty()) {
                lines.add(line(each));
            } else if (each.launchFee()) {
                lines.add(launching(each, pass.get()));
            }
        }
        return new FiveYearCost(lines, facts.horizonYears(), facts.rate(), facts.outingsPerYear());
    }

    /** Makes the line of whatever launching is expected to be cheaper, with the mean, least and most of the cheaper each time. */
    private CostLine launching(Charge fee, Charge pass) {
        CostLine fees = line(fee);
        CostLine passes = line(pass);
        boolean cheaper = passes.presentValue() < fees.presentValue();
        double mean = meanCheaper(fee.each().times(facts.outingsPerYear()), pass.each());
        return line(
                cheaper ? pass : fee,
                mean,
                Math.min(fees.likelyPresentValue(), passes.likelyPresentValue()),
                Math.min(fees.leastPresentValue(), passes.leastPresentValue()),
                Math.min(fees.mostPresentValue(), passes.mostPresentValue()));
    }

    /** Works out the mean of the lower of day fees and pass a year, by the midpoint rule in outings, fee and pass. */
    private double meanCheaper(Estimate fees, Estimate pass) {
        double[] dayFees = midpoints(fees);
        double[] passes = midpoints(pass);
        double sum = 0;
        for (double share : shares) {
            for (double dayFee : dayFees) {
                for (double each : passes) {
                    sum += Math.min(share * dayFee, each);
                }
            }
        }
        return sum / (shares.length * dayFees.length * passes.length);
    }

    private static double[] midpoints(Estimate estimate) {
        if (estimate.certain()) {
            return new double[] {estimate.likely()};
        }
        PertTable table = new Pert(estimate).table();
        double[] values = new double[MIDPOINTS];
        for (int i = 0; i < MIDPOINTS; i++) {
            values[i] = table.quantile((i + 0.5) / MIDPOINTS);
        }
        return values;
    }

    private CostLine line(Charge charge) {
        Estimate each = each(charge);
        double factor = charge.presentFactor(facts.rate());
        double outings = facts.outingsPerYear();
        double likely = factor * charge.multiplier(outings) * each.likely();
        double few = factor * charge.multiplier(outings * facts.outingsSpread().low());
        double many = factor * charge.multiplier(outings * facts.outingsSpread().high());
        // what comes back does not hang on outings; its likely value is the mean of its futures
        double mean = charge.income() ? each.likely() : charge.meanMultiplier(outings, shares) * each.mean();
        return line(
                charge,
                mean,
                likely,
                charge.income() ? factor * each.high() : few * each.low(),
                charge.income() ? factor * each.low() : many * each.high());
    }

    /** Makes a line from what is expected to be paid each time it falls due. */
    private CostLine line(Charge charge, double mean, double likely, double least, double most) {
        List<CashFlow> flows = new ArrayList<>();
        double times = 0;
        for (int year = 0; year < charge.byYear().length; year++) {
            double here = charge.byYear()[year];
            if (here != 0) {
                flows.add(new CashFlow(year, here * mean));
                times += here;
            }
        }
        return new CostLine(
                charge.item().id(),
                charge.item().label(),
                charge.item().group(),
                Charges.timing(charge),
                each(charge),
                Math.abs(times) * charge.multiplier(facts.outingsPerYear()),
                charge.item().rule().byWay(),
                charge.income(),
                flows,
                times * mean,
                PresentValue.of(flows, facts.rate()),
                likely,
                least,
                most,
                charge.item().why());
    }

    private Estimate each(Charge charge) {
        return charge.ofPrice() ? charge.each().times(facts.price()) : charge.each();
    }
}
