package org.keelweigh.cost;

import org.keelweigh.quantity.Estimate;

/**
 * One uncertain amount of a {@link CostSampler}.
 *
 * @param id the price-book id, or that of a typed cost
 * @param shared whether boats with the same id share its draw: the fee of a launch is dear or cheap for all of them.
 *     Otherwise each boat has a draw of its own
 * @param each what one costs, in money, or as a share of the price for a tax
 */
public record UncertainItem(String id, boolean shared, Estimate each) {}
