package org.keelweigh.cost;

/**
 * How the expected cost of owning a boat answers to its price: a straight line, for break-even and offers.
 *
 * @param price a price; at least 0
 * @param cost expected present value at that price
 * @param slope expected cost for each unit of price: 1 plus the expected tax share
 */
public record PriceResponse(double price, double cost, double slope) {

    /**
     * Works the line out.
     *
     * @param facts the boat and its use, at any price
     * @param book what things cost
     * @param depreciation how boats lose value
     */
    public static PriceResponse of(OwnershipFacts facts, PriceBook book, Depreciation depreciation) {
        double cost = Ownership.cost(facts, book, depreciation).presentValue();
        double slope = 0;
        for (Charge each : Charges.of(facts, book, depreciation)) {
            slope += each.ofPrice() ? each.each().mean() * each.presentFactor(facts.rate()) : 0;
        }
        return new PriceResponse(facts.price(), cost, slope);
    }

    /** Tells the expected cost at another price. */
    public double costAt(double otherPrice) {
        return cost + slope * (otherPrice - price);
    }

    /** Tells the price at which the expected cost is {@code wantedCost}; negative when no price is low enough. */
    public double priceFor(double wantedCost) {
        return price + (wantedCost - cost) / slope;
    }
}
