package org.keelweigh.cost;

/**
 * Writes a cost off by the methods of a shop's books. These follow rules, not the market: what a used boat fetches is
 * for {@link Depreciation} to say, which borrows only {@link #constantRate} from here.
 *
 * <p>Source: M. Franklin, P. Graybeal, D. Cooper, <i>Principles of Accounting</i>, vol. 1, OpenStax 2019, sec. 11.3
 * (from memory).
 *
 * @param cost what was paid; at least {@code salvage}
 * @param salvage what is left at the end; at least 0
 * @param years years of use; at least 1
 */
public record BookDepreciation(double cost, double salvage, int years) {

    public BookDepreciation {
        if (!(salvage >= 0 && cost >= salvage && cost < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "The cost must be at least what is left, and that at least 0, not " + cost + " and " + salvage);
        }
        if (years < 1) {
            throw new IllegalArgumentException("The use must last at least 1 year, not " + years);
        }
    }

    /** Tells the yearly amount in a straight line, {@code (C − S)/n}. */
    public double straightLine() {
        return (cost - salvage) / years;
    }

    /**
     * Tells the amount of one year by the sum of the years' digits, {@code (C − S)·2(n − p + 1)/(n(n + 1))}.
     *
     * @param year the year p, 1..n
     */
    public double sumOfYears(int year) {
        requireYear(year);
        return (cost - salvage) * 2 * (years - year + 1) / ((double) years * (years + 1));
    }

    /**
     * Tells the amount of one year by the declining balance, {@code min(B·f/n, B − S)} with book value B before it.
     *
     * @param year the year p, 1..n
     * @param factor how many times the straight-line rate, 2 for double declining balance; above 0, at most n
     */
    public double decliningBalance(int year, double factor) {
        requireYear(year);
        if (!(factor > 0 && factor <= years)) {
            throw new IllegalArgumentException(
                    "The factor must be above 0 and at most the " + years + " years, not " + factor);
        }
        double before = Math.max(salvage, cost * Math.pow(1 - factor / years, year - 1.0));
        return Math.min(before * factor / years, before - salvage);
    }

    /**
     * Tells the share of its value that is lost each year when the loss is a constant rate,
     * {@code 1 − (S/C)^(1/n)}.
     */
    public double constantRate() {
        return cost == 0 ? 0 : 1 - Math.pow(salvage / cost, 1.0 / years);
    }

    private void requireYear(int year) {
        if (year < 1 || year > years) {
            throw new IllegalArgumentException("The year must be 1 to " + years + ", not " + year);
        }
    }
}
