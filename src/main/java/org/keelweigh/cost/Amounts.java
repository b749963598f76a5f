package org.keelweigh.cost;

/** Refuses amounts that make no sense, naming them. */
final class Amounts {

    private Amounts() {}

    static void requirePositive(String what, double amount) {
        if (!(amount > 0 && amount < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("The " + what + " must be above 0, not " + amount);
        }
    }

    static void requireNotNegative(String what, double amount) {
        if (!(amount >= 0 && amount < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("The " + what + " must be at least 0, not " + amount);
        }
    }
}
