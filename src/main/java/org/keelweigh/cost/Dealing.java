package org.keelweigh.cost;

import org.jspecify.annotations.Nullable;
import org.keelweigh.condition.SellerKind;

/**
 * The circumstances in which a price is agreed.
 *
 * @param seller who sells
 * @param daysListed days since it was first offered; at least 0
 * @param month month of the year in the northern hemisphere, 1..12; absent when the season is left out
 * @param otherBuyers how many others are known to want it; at least 0
 * @param cashToday whether the buyer pays cash and takes the boat along
 */
public record Dealing(
        SellerKind seller, int daysListed, @Nullable Integer month, int otherBuyers, boolean cashToday) {

    public Dealing {
        Amounts.requireNotNegative("number of days listed", daysListed);
        Amounts.requireNotNegative("number of other buyers", otherBuyers);
        if (month != null && (month < 1 || month > 12)) {
            throw new IllegalArgumentException("The month must be 1 to 12, not " + month);
        }
    }

    boolean offSeason() {
        return month != null && (month <= 2 || month >= 9);
    }
}
