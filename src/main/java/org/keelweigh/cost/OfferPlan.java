package org.keelweigh.cost;

import org.keelweigh.quantity.Estimate;

/**
 * Three prices to write down before the call: {@code opening ≤ target ≤ walkAway}.
 *
 * @param opening the first offer
 * @param target the price to aim for: the fair price, and not above the walk-away price
 * @param walkAway the most to pay at all; above it another boat or none is better
 * @param chanceTaken the chance that the seller takes the walk-away price, 0..1
 * @param worthMaking whether an offer is worth making: the walk-away price is one that may be opened with, and likely enough to
 *     be taken
 * @param usuallyPaid what such a seller is usually paid in the end, in money
 */
public record OfferPlan(
        double opening,
        double target,
        double walkAway,
        double chanceTaken,
        boolean worthMaking,
        Estimate usuallyPaid) {}
