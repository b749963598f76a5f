package org.keelweigh.decision.weight;

import java.util.List;

/**
 * Mean consistency index of random reciprocal matrices by size, against which a consistency index is judged. Tables
 * differ between authors, so a ratio is worth something only together with the name of its table.
 *
 * @param name of the table
 * @param bySize index for 1, 2, 3 … criteria
 */
public record RandomIndex(String name, List<Double> bySize) {

    /** Saaty 1980, up to 15 criteria; the entries for 11 to 15 are from memory. */
    public static final RandomIndex SAATY_1980 = new RandomIndex(
            "Saaty 1980",
            List.of(0.0, 0.0, 0.58, 0.90, 1.12, 1.24, 1.32, 1.41, 1.45, 1.49, 1.51, 1.48, 1.56, 1.57, 1.59));

    /** Copies the table. */
    public RandomIndex {
        bySize = List.copyOf(bySize);
    }

    /**
     * Returns the index for n criteria.
     *
     * @throws IllegalArgumentException if the table has none
     */
    public double of(int n) {
        if (n < 1 || n > bySize.size()) {
            throw new IllegalArgumentException(
                    "The random index of '" + name + "' is known for 1 to " + bySize.size() + " criteria, not " + n);
        }
        return bySize.get(n - 1);
    }
}
