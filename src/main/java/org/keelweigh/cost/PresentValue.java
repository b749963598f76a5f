package org.keelweigh.cost;

import java.util.List;

/** Brings money of several years to one figure. */
public final class PresentValue {

    private PresentValue() {}

    /**
     * Adds up what each flow counts now, {@code Σ C_t (1 + d)^−t}.
     *
     * @param flows the flows in any order
     * @param rate the discount rate, real for constant-value money
     */
    public static double of(List<CashFlow> flows, DiscountRate rate) {
        double sum = 0;
        for (CashFlow each : flows) {
            sum += each.amount() * rate.singlePresentValue(each.year());
        }
        return sum;
    }
}
