package org.keelweigh.cost;

import java.util.List;

/**
 * What a used boat should cost, and how that comes about.
 *
 * @param amount the fair price; at least 0
 * @param low one standard deviation below
 * @param high one standard deviation above
 * @param sound the same before the repairs come off; at least {@code amount}
 * @param parts the steps to it, in order; their amounts add up to {@code amount}
 */
public record FairPrice(double amount, double low, double high, double sound, List<Part> parts) {

    public FairPrice {
        parts = List.copyOf(parts);
    }

    /**
     * One step of the sum.
     *
     * @param label what is added or taken off, as a phrase that can be shown
     * @param amount money added, negative for what comes off
     */
    public record Part(String label, double amount) {}
}
