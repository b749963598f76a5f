package org.keelweigh.cost;

/**
 * Three prices to write down before the call: {@code opening ≤ target ≤ walkAway}.
 *
 * @param opening the first offer
 * @param target the most that is a good price: fair, and not above the walk-away price
 * @param walkAway the most to pay at all; above it another boat or none is better
 */
public record OfferPlan(double opening, double target, double walkAway) {}
