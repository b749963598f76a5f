package org.keelweigh.cost;

import java.util.Arrays;
import org.keelweigh.quantity.Estimate;

/**
 * One cost laid out over the years: {@code amount · multiplier(outings) · byYear[t]}. The one place where a rule of the
 * price book becomes money in a year; the lines shown and the sampled futures are both made from it.
 *
 * @param item where it comes from
 * @param each what one costs, in money; for a charge on the price, as a share of it
 * @param ofPrice whether {@code each} is a share of the price
 * @param driver how outings multiply it
 * @param intervalDays days of use between two services, for {@link Driver#USE_DAYS}
 * @param byYear how many fall at the end of each year, 0..horizon; negative is money coming back
 */
record Charge(PriceItem item, Estimate each, boolean ofPrice, Driver driver, double intervalDays, double[] byYear) {

    /** How outings multiply a charge. */
    enum Driver {
        FIXED,
        OUTINGS,
        USE_DAYS
    }

    boolean launchFee() {
        return item.rule() == PriceRule.OUTING
                && item.unit() == PriceItem.Unit.MONEY
                && item.when() == Need.LAUNCH_FEES;
    }

    boolean pass() {
        return item.rule() == PriceRule.PASS;
    }

    boolean income() {
        return item.unit() == PriceItem.Unit.TIMES_CURVE;
    }

    double multiplier(double outings) {
        return switch (driver) {
            case FIXED -> 1;
            case OUTINGS -> outings;
            case USE_DAYS -> Math.max(item.minPerYear(), outings / intervalDays);
        };
    }

    /**
     * Tells the mean of {@link #multiplier} when outings turn out as shares of what was said.
     *
     * @param outings outings a year as they were said
     * @param shares equally likely shares of them
     */
    double meanMultiplier(double outings, double[] shares) {
        return Arrays.stream(shares)
                .map(share -> multiplier(outings * share))
                .average()
                .orElseThrow();
    }

    double presentFactor(DiscountRate rate) {
        double sum = 0;
        for (int year = 0; year < byYear.length; year++) {
            sum += byYear[year] * rate.singlePresentValue(year);
        }
        return sum;
    }
}
