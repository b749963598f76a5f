package org.keelweigh.cost;

import org.jspecify.annotations.Nullable;
import org.keelweigh.quantity.Estimate;

/**
 * Something to put to the seller, with what it may take off.
 *
 * @param label what it is, as a phrase that can be shown to the seller
 * @param basis how well it is known
 * @param cost what it costs, money; its low is at least 0
 * @param off what it may take off the price; absent until {@link Negotiation#weigh} has weighed it
 */
public record Argument(
        String label, Basis basis, Estimate cost, @Nullable Estimate off) {

    /** How well an argument stands. */
    public enum Basis {
        /** A repair that was seen, best with a written quote. */
        DOCUMENTED,
        /** A fault that is likely, but was not proved. */
        SUSPECTED,
        /** Safety gear that does not come with the boat. */
        MISSING_KIT
    }

    public Argument {
        Amounts.requireNotNegative("cost of " + label, cost.low());
    }
}
