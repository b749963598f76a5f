package org.keelweigh.cost;

import java.util.List;
import org.keelweigh.quantity.Estimate;

/**
 * One line of the cost of owning a boat.
 *
 * @param id the price-book id, or that of a typed cost
 * @param label what it is, as a phrase
 * @param group the heap it falls into
 * @param timing when it is paid, as a phrase
 * @param each what one costs, in money
 * @param count how many there are over the horizon
 * @param byWay whether it is counted in kilometres of way, there and back
 * @param income whether the money comes back
 * @param flows what is expected to be paid in which year; negative comes back
 * @param total expected total, undiscounted; negative comes back
 * @param presentValue the same, discounted
 * @param likelyPresentValue discounted, with the estimate at its likely value
 * @param leastPresentValue discounted, with the estimate at its cheapest for the buyer
 * @param mostPresentValue discounted, with the estimate at its dearest for the buyer
 * @param why the catalogue item or typed number behind it, as a phrase
 */
public record CostLine(
        String id,
        String label,
        CostGroup group,
        String timing,
        Estimate each,
        double count,
        boolean byWay,
        boolean income,
        List<CashFlow> flows,
        double total,
        double presentValue,
        double likelyPresentValue,
        double leastPresentValue,
        double mostPresentValue,
        String why) {

    public CostLine {
        flows = List.copyOf(flows);
    }
}
