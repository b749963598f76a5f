package org.keelweigh.quantity;

/** Refuses numbers that are not numbers. */
final class Finite {

    private Finite() {}

    static void require(String what, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("The " + what + " must be a number of " + unit + ", not " + value);
        }
    }
}
