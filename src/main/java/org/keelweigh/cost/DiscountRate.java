package org.keelweigh.cost;

/**
 * A yearly rate at which money later counts for less than money now.
 *
 * <p>Keelweigh counts in constant-value money, so the rate is a real one: interest without inflation. Factors follow
 * the end-of-year convention. Source of all factors: S. Fuller, S. Petersen, <i>Life-Cycle Costing Manual for the
 * Federal Energy Management Program</i>, NIST Handbook 135, 1995, ch. 3. They are computed with {@code log1p} and
 * {@code expm1}, so that they stay exact for rates near 0, where the printed formulas divide 0 by 0.
 *
 * @param perYear the share a year, 0.03 for 3 %; above −1 and at most 1
 */
public record DiscountRate(double perYear) {

    /** The usual real rate where nobody chose one: 2 % a year, an estimate of what safe savings earn above inflation. */
    public static final DiscountRate USUAL = new DiscountRate(0.02);

    public DiscountRate {
        requireRate("discount rate", perYear);
    }

    /**
     * Makes the real rate behind a nominal one: {@code (1 + D)/(1 + I) − 1}, not {@code D − I}.
     *
     * @param nominal nominal rate a year; above −1, at most 1
     * @param inflation general price rise a year; above −1, at most 1
     */
    public static DiscountRate realOf(double nominal, double inflation) {
        requireRate("nominal rate", nominal);
        requireRate("inflation", inflation);
        return new DiscountRate((nominal - inflation) / (1 + inflation));
    }

    /**
     * Tells the nominal rate that gives current-money flows the same present value: {@code (1 + d)(1 + I) − 1}.
     *
     * @param inflation general price rise a year; above −1, at most 1
     */
    public double nominal(double inflation) {
        requireRate("inflation", inflation);
        return perYear + inflation + perYear * inflation;
    }

    /**
     * Tells the single present value factor SPV, {@code (1 + d)^−t}: what 1 paid after {@code years} counts now.
     *
     * @param years years from now, whole or not; at least 0
     */
    public double singlePresentValue(double years) {
        requireYears(years, 0);
        return Math.exp(-years * Math.log1p(perYear));
    }

    /**
     * Tells the uniform present value factor UPV, {@code ((1 + d)^n − 1)/(d(1 + d)^n)}, and n at d = 0: what 1 paid at
     * the end of each of {@code years} years counts now.
     *
     * @param years number of years; above 0
     */
    public double uniformPresentValue(double years) {
        requireYears(years, Double.MIN_VALUE);
        return perYear == 0 ? years : -Math.expm1(-years * Math.log1p(perYear)) / perYear;
    }

    /**
     * Tells the modified uniform present value factor UPV*, {@code Σ ((1 + e)/(1 + d))^k, k = 1..n}, which is n where
     * e = d: what a yearly payment counts now that is 1 in today's prices and rises by e a year.
     *
     * @param escalation real price rise a year of what is bought; above −1, at most 1
     * @param years number of years; above 0
     */
    public double escalatingPresentValue(double escalation, double years) {
        requireRate("escalation", escalation);
        requireYears(years, Double.MIN_VALUE);
        double logRatio = Math.log1p(escalation) - Math.log1p(perYear);
        return logRatio == 0 ? years : Math.exp(logRatio) * Math.expm1(years * logRatio) / Math.expm1(logRatio);
    }

    /**
     * Spreads a present value over {@code years} equal yearly payments: {@code PV / UPV}, the equivalent annual cost.
     *
     * @param presentValue what is to be spread, money of today
     * @param years number of years; above 0
     */
    public double equivalentAnnual(double presentValue, double years) {
        return presentValue / uniformPresentValue(years);
    }

    private static void requireRate(String what, double rate) {
        if (!(rate > -1 && rate <= 1)) {
            throw new IllegalArgumentException(
                    "The " + what + " must be a share a year above -1 and at most 1, not " + rate);
        }
    }

    private static void requireYears(double years, double least) {
        if (!(years >= least && years < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "The time must be " + (least > 0 ? "more than 0" : "at least 0") + " years, not " + years);
        }
    }
}
