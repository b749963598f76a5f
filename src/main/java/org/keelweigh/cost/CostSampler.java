package org.keelweigh.cost;

import java.util.ArrayList;
import java.util.List;

/**
 * The cost of owning one boat, taken apart so that many futures can be worked out fast.
 *
 * <p>In a future, uncertain amount i is its {@link Pert} quantile at a uniform draw, outings take any number, and the
 * resale is log-normal about its likely value with the spread of the boat's retention curve. Then
 * {@code PV = fixed + price + outings·perOuting + Σ amount_i·multiplier_i(outings)·factor_i − resale·SPV(H)}, with the
 * cheaper of day fees and a year's pass in each future. It is linear in the price, with slope 1 plus the tax share: the
 * resale does not depend on what was paid. Objects are immutable and may be used by many threads at once.
 */
public final class CostSampler {

    private final List<UncertainItem> items;
    private final Charge[] charges;
    private final PertTable[] tables;
    private final double[][] presentByYear;
    private final double[] factors;
    private final double[] fixedByYear;
    private final double[] perOutingByYear;
    private final double fixed;
    private final double perOuting;
    private final double resale;
    private final double resaleSigma;
    private final int fee;
    private final int pass;

    private CostSampler(OwnershipFacts facts, List<Charge> all, double curveSigma) {
        int years = facts.horizonYears() + 1;
        fixedByYear = new double[years];
        perOutingByYear = new double[years];
        List<Charge> uncertain = new ArrayList<>();
        double resaleSum = 0;
        for (Charge each : all) {
            double[] present = present(each, facts.rate());
            if (each.income()) {
                resaleSum += -sum(present) * each.each().likely();
            } else if (!addCertain(each, present)) {
                uncertain.add(each);
            }
        }
        resale = resaleSum;
        fixed = sum(fixedByYear);
        perOuting = sum(perOutingByYear);
        resaleSigma = Math.sqrt(Math.log1p(curveSigma * curveSigma));
        charges = uncertain.toArray(Charge[]::new);
        tables = new PertTable[charges.length];
        presentByYear = new double[charges.length][];
        factors = new double[charges.length];
        List<UncertainItem> made = new ArrayList<>();
        int feeAt = -1;
        int passAt = -1;
        for (int i = 0; i < charges.length; i++) {
            Charge each = charges[i];
            tables[i] = new Pert(each.each()).table();
            presentByYear[i] = present(each, facts.rate());
            factors[i] = sum(presentByYear[i]);
            made.add(new UncertainItem(each.item().id(), each.item().shared(), each.each()));
            feeAt = each.launchFee() ? i : feeAt;
            passAt = each.pass() ? i : passAt;
        }
        items = List.copyOf(made);
        fee = feeAt;
        pass = passAt;
    }

    /**
     * Takes a boat's cost apart.
     *
     * @param facts the boat and its use; price and outings are only defaults, each future has its own
     * @param book what things cost
     * @param depreciation how boats lose value
     */
    public static CostSampler of(OwnershipFacts facts, PriceBook book, Depreciation depreciation) {
        double sigma = depreciation
                .curve(facts.kind(), facts.material(), facts.drive())
                .sigma();
        return new CostSampler(facts, Charges.of(facts, book, depreciation), sigma);
    }

    /** Tells the uncertain amounts, in the order in which draws are given. */
    public List<UncertainItem> items() {
        return items;
    }

    /** Tells the standard deviation of the logarithm of the resale. */
    public double resaleSigma() {
        return resaleSigma;
    }

    /** Tells the expected present value of the resale. */
    public double resalePresentValue() {
        return resale;
    }

    /** Tells the present value of what is certain and hangs neither on the price nor on outings. */
    public double fixedPresentValue() {
        return fixed;
    }

    /**
     * Works out one future's present value.
     *
     * @param price what is paid for the boat
     * @param outings outings a year
     * @param draws uniform draws in 0..1, one for each of {@link #items()}
     * @param resaleNormal a standard normal draw for the resale
     */
    public double presentValue(double price, double outings, double[] draws, double resaleNormal) {
        double sum = fixed + price + outings * perOuting - resale(resaleNormal);
        double dayFees = Double.POSITIVE_INFINITY;
        double passes = Double.POSITIVE_INFINITY;
        for (int i = 0; i < charges.length; i++) {
            double cost = amount(i, price, outings, draws) * factors[i];
            if (i == fee) {
                dayFees = cost;
            } else if (i == pass) {
                passes = cost;
            } else {
                sum += cost;
            }
        }
        double launching = Math.min(dayFees, passes);
        return launching == Double.POSITIVE_INFINITY ? sum : sum + launching;
    }

    /**
     * Works out one future's money year by year: what has been spent, discounted, by the end of each year. The last
     * entry, with the resale taken off, is {@link #presentValue}.
     *
     * @param price what is paid for the boat
     * @param outings outings a year
     * @param draws uniform draws in 0..1, one for each of {@link #items()}
     * @param resaleNormal a standard normal draw for the resale
     * @return one figure for each year from 0 to the horizon
     */
    public double[] spentByYear(double price, double outings, double[] draws, double resaleNormal) {
        double[] spent = new double[fixedByYear.length];
        for (int year = 0; year < spent.length; year++) {
            spent[year] = fixedByYear[year] + outings * perOutingByYear[year];
        }
        spent[0] += price;
        spent[spent.length - 1] -= resale(resaleNormal);
        int dearer = dearerLaunch(price, outings, draws);
        for (int i = 0; i < charges.length; i++) {
            if (i != dearer) {
                double amount = amount(i, price, outings, draws);
                for (int year = 0; year < spent.length; year++) {
                    spent[year] += amount * presentByYear[i][year];
                }
            }
        }
        for (int year = 1; year < spent.length; year++) {
            spent[year] += spent[year - 1];
        }
        return spent;
    }

    /**
     * Tells by how much the present value rises for each unit of price in one future: 1 plus the tax share.
     *
     * @param draws uniform draws in 0..1, one for each of {@link #items()}
     */
    public double priceSlope(double[] draws) {
        double slope = 1;
        for (int i = 0; i < charges.length; i++) {
            if (charges[i].ofPrice()) {
                slope += tables[i].quantile(draws[i]) * factors[i];
            }
        }
        return slope;
    }

    private double resale(double normal) {
        return resale * Math.exp(resaleSigma * normal - resaleSigma * resaleSigma / 2);
    }

    private int dearerLaunch(double price, double outings, double[] draws) {
        if (fee < 0 || pass < 0) {
            return -1;
        }
        double dayFees = amount(fee, price, outings, draws) * factors[fee];
        double passes = amount(pass, price, outings, draws) * factors[pass];
        return passes < dayFees ? fee : pass;
    }

    private double amount(int i, double price, double outings, double[] draws) {
        double amount = tables[i].quantile(draws[i]) * charges[i].multiplier(outings);
        return charges[i].ofPrice() ? amount * price : amount;
    }

    /** Adds what needs no draw to the fixed parts; the price itself and what hangs on use-days are left to others. */
    private boolean addCertain(Charge charge, double[] present) {
        if (charge.item().id().equals(Charges.PRICE_ID)) {
            return true;
        }
        boolean plain = charge.each().certain() && !charge.ofPrice() && !charge.launchFee() && !charge.pass();
        if (!plain || charge.driver() == Charge.Driver.USE_DAYS) {
            return false;
        }
        double[] into = charge.driver() == Charge.Driver.FIXED ? fixedByYear : perOutingByYear;
        for (int year = 0; year < into.length; year++) {
            into[year] += charge.each().likely() * present[year];
        }
        return true;
    }

    private static double[] present(Charge charge, DiscountRate rate) {
        double[] present = charge.byYear().clone();
        for (int year = 0; year < present.length; year++) {
            present[year] *= rate.singlePresentValue(year);
        }
        return present;
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double each : values) {
            sum += each;
        }
        return sum;
    }
}
