package org.keelweigh.cost;

import org.keelweigh.boat.Coded;

/** When an item of the price book is paid. */
public enum PriceRule implements Coded {
    /** Once, before the first launch. */
    ONCE("once"),
    /** At the end of each year. */
    YEAR("year"),
    /** For each outing. */
    OUTING("outing"),
    /** For each kilometre of fetching the boat, there and back. */
    KM_ONCE("km-once"),
    /** For each kilometre to the water, there and back, on each outing. */
    KM_OUTING("km-outing"),
    /** Every so many years, but not on the day the boat is sold. */
    EVERY_YEARS("every-n-years"),
    /** Every so many days of use. */
    EVERY_USE_DAYS("every-n-use-days"),
    /** Each year in place of the outing fees, when that is cheaper. */
    PASS("pass"),
    /** On the day the boat is sold. */
    END("end");

    private final String code;

    PriceRule(String code) {
        this.code = code;
    }

    /** Tells whether it is paid by the kilometre of way. */
    boolean byWay() {
        return this == KM_ONCE || this == KM_OUTING;
    }

    @Override
    public String code() {
        return code;
    }
}
