package org.keelweigh.cost;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * What owning a boat costs over the horizon, five years unless set, line by line. Every sum is the sum of the lines.
 *
 * @param lines the lines, in the order to show them
 * @param horizonYears years of ownership
 * @param rate real discount rate
 * @param outingsPerYear outings a year
 */
public record FiveYearCost(List<CostLine> lines, int horizonYears, DiscountRate rate, double outingsPerYear) {

    public FiveYearCost {
        lines = List.copyOf(lines);
    }

    /** Tells the expected cost over the horizon, undiscounted. */
    public double total() {
        return sum(CostLine::total);
    }

    /** Tells the expected present value: every estimate at its mean, the resale at its likely value. The cost in one figure. */
    public double presentValue() {
        return sum(CostLine::presentValue);
    }

    /** Tells the present value with every estimate at its likely value, which is less where estimates reach far up. */
    public double likelyPresentValue() {
        return sum(CostLine::likelyPresentValue);
    }

    /** Tells the present value if every estimate turned out at its cheapest at once: a bound, not a percentile. */
    public double leastPresentValue() {
        return sum(CostLine::leastPresentValue);
    }

    /** Tells the present value if every estimate turned out at its dearest at once: a bound, not a percentile. */
    public double mostPresentValue() {
        return sum(CostLine::mostPresentValue);
    }

    /** Tells the expected present value of one heap. */
    public double presentValue(CostGroup group) {
        return lines.stream()
                .filter(each -> each.group() == group)
                .mapToDouble(CostLine::presentValue)
                .sum();
    }

    /** Tells the equal yearly payments worth the same as the expected cost, {@code PV·d/(1 − (1 + d)^−H)}. */
    public double equivalentYearly() {
        return rate.equivalentAnnual(presentValue(), horizonYears);
    }

    /** Tells the equivalent yearly cost per outing; empty without outings. */
    public OptionalDouble perOuting() {
        return outingsPerYear == 0 ? OptionalDouble.empty() : OptionalDouble.of(equivalentYearly() / outingsPerYear);
    }

    /** Tells the cash that is expected to be needed before the first launch. */
    public double dayOne() {
        return intoYear(0);
    }

    /** Tells what the boat likely fetches at the end, before the cost of selling it; undiscounted. */
    public double resale() {
        return -lines.stream()
                .filter(CostLine::income)
                .mapToDouble(CostLine::total)
                .sum();
    }

    /**
     * Tells what is expected to be paid in one year less what comes back, undiscounted.
     *
     * @param year 0 for the purchase, up to the horizon
     */
    public double intoYear(int year) {
        return sum(line -> line.flows().stream()
                .filter(flow -> flow.year() == year)
                .mapToDouble(CashFlow::amount)
                .sum());
    }

    private double sum(ToDoubleFunction<CostLine> figure) {
        return lines.stream().mapToDouble(figure).sum();
    }
}
