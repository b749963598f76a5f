package org.keelweigh.cost;

/**
 * Money that changes hands at one time.
 *
 * @param year years from the purchase, whole or not; at least 0
 * @param amount constant-value money; positive is paid, negative comes back
 */
public record CashFlow(double year, double amount) {

    public CashFlow {
        if (!(year >= 0 && year < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("A cash flow happens at least 0 years from the purchase, not " + year);
        }
        if (!Double.isFinite(amount)) {
            throw new IllegalArgumentException("A cash flow must be an amount of money, not " + amount);
        }
    }
}
