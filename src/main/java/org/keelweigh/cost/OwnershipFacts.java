package org.keelweigh.cost;

import java.util.List;
import java.util.Map;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.quantity.Estimate;

/**
 * Everything the cost of owning one boat depends on, each figure resolved.
 *
 * @param kind what kind of boat
 * @param material what the hull is made of
 * @param drive what moves it beside a paddle or oars
 * @param price what is paid for it; at least 0
 * @param priceWhy where the price comes from, as a phrase that can be shown
 * @param priceNew today's price new; above 0
 * @param ageYears age now; at least 0
 * @param conditionAtEnd state when it is sold again
 * @param discontinuedDrive whether its drive is no longer made
 * @param needs how often each need holds, such as two missing life jackets; needs that follow from drive and build are
 *     not listed; 0 or absent means it does not hold
 * @param outingsPerYear outings a year; at least 0; each counts as one day of use
 * @param outingsSpread how outings may turn out, as shares of {@code outingsPerYear}, the same in all years; at least 0
 * @param fetchKm kilometres to the seller, one way; at least 0
 * @param waterKm kilometres to the water, one way; 0 leaves the drives out, which are the same for every boat
 * @param hardWater whether it is used in salt or sand, where drives want service sooner
 * @param typed costs that a person or a finding gave: repairs known and expected, a chosen cart
 * @param overrides typed amounts by price-book id that stand in for the book's, in the same unit, such as a sales tax
 *     in per cent; a typed {@code resale} is money
 * @param horizonYears years of ownership, 1..30
 * @param rate real discount rate
 */
public record OwnershipFacts(
        BoatKind kind,
        HullMaterial material,
        DriveKind drive,
        double price,
        String priceWhy,
        double priceNew,
        double ageYears,
        ConditionClass conditionAtEnd,
        boolean discontinuedDrive,
        Map<Need, Integer> needs,
        double outingsPerYear,
        Estimate outingsSpread,
        double fetchKm,
        double waterKm,
        boolean hardWater,
        List<PriceItem> typed,
        Map<String, Estimate> overrides,
        int horizonYears,
        DiscountRate rate) {

    private static final int LONGEST_HORIZON = 30;
    private static final String TYPED_PRICE = "the price that was typed or agreed";

    public OwnershipFacts {
        needs = Map.copyOf(needs);
        typed = List.copyOf(typed);
        overrides = Map.copyOf(overrides);
        Amounts.requireNotNegative("price", price);
        Amounts.requirePositive("price new", priceNew);
        Amounts.requireNotNegative("age in years", ageYears);
        Amounts.requireNotNegative("number of outings a year", outingsPerYear);
        Amounts.requireNotNegative("least share of the outings", outingsSpread.low());
        Amounts.requireNotNegative("distance to the seller in km", fetchKm);
        Amounts.requireNotNegative("distance to the water in km", waterKm);
        needs.forEach((need, count) -> Amounts.requireNotNegative("count of " + need.code(), count));
        overrides.forEach((id, each) -> Amounts.requireNotNegative("low amount typed for " + id, each.low()));
        if (horizonYears < 1 || horizonYears > LONGEST_HORIZON) {
            throw new IllegalArgumentException(
                    "The horizon must be 1 to " + LONGEST_HORIZON + " years, not " + horizonYears);
        }
    }

    /**
     * Makes facts with five years, the usual rate, good condition at the end, 15 outings a year and nothing else.
     *
     * @param kind what kind of boat
     * @param material what the hull is made of
     * @param drive what moves it beside a paddle or oars
     * @param price what is paid for it; at least 0
     * @param priceNew today's price new; above 0
     * @param ageYears age now; at least 0
     */
    public static OwnershipFacts of(
            BoatKind kind, HullMaterial material, DriveKind drive, double price, double priceNew, double ageYears) {
        return new OwnershipFacts(
                kind,
                material,
                drive,
                price,
                TYPED_PRICE,
                priceNew,
                ageYears,
                ConditionClass.GOOD,
                false,
                Map.of(),
                15,
                Estimate.exactly(1),
                0,
                0,
                false,
                List.of(),
                Map.of(),
                5,
                DiscountRate.USUAL);
    }

    /** Makes the same facts at another price. */
    public OwnershipFacts withPrice(double other) {
        return new OwnershipFacts(
                kind,
                material,
                drive,
                other,
                priceWhy,
                priceNew,
                ageYears,
                conditionAtEnd,
                discontinuedDrive,
                needs,
                outingsPerYear,
                outingsSpread,
                fetchKm,
                waterKm,
                hardWater,
                typed,
                overrides,
                horizonYears,
                rate);
    }

    /** Makes the same facts with other needs. */
    public OwnershipFacts withNeeds(Map<Need, Integer> other) {
        return new OwnershipFacts(
                kind,
                material,
                drive,
                price,
                priceWhy,
                priceNew,
                ageYears,
                conditionAtEnd,
                discontinuedDrive,
                other,
                outingsPerYear,
                outingsSpread,
                fetchKm,
                waterKm,
                hardWater,
                typed,
                overrides,
                horizonYears,
                rate);
    }

    /**
     * Makes the same facts for another use.
     *
     * @param outings outings a year; at least 0
     * @param toSellerKm kilometres to the seller, one way
     * @param toWaterKm kilometres to the water, one way; 0 leaves the drives out
     * @param saltOrSand whether it is used in salt or sand
     */
    public OwnershipFacts withUse(double outings, double toSellerKm, double toWaterKm, boolean saltOrSand) {
        return new OwnershipFacts(
                kind,
                material,
                drive,
                price,
                priceWhy,
                priceNew,
                ageYears,
                conditionAtEnd,
                discontinuedDrive,
                needs,
                outings,
                outingsSpread,
                toSellerKm,
                toWaterKm,
                saltOrSand,
                typed,
                overrides,
                horizonYears,
                rate);
    }

    /** Makes the same facts with other typed costs and amounts that stand in for the price book's. */
    public OwnershipFacts withTyped(List<PriceItem> costs, Map<String, Estimate> standIns) {
        return new OwnershipFacts(
                kind,
                material,
                drive,
                price,
                priceWhy,
                priceNew,
                ageYears,
                conditionAtEnd,
                discontinuedDrive,
                needs,
                outingsPerYear,
                outingsSpread,
                fetchKm,
                waterKm,
                hardWater,
                costs,
                standIns,
                horizonYears,
                rate);
    }

    /** Makes the same facts over another horizon at another rate. */
    public OwnershipFacts over(int years, DiscountRate other) {
        return new OwnershipFacts(
                kind,
                material,
                drive,
                price,
                priceWhy,
                priceNew,
                ageYears,
                conditionAtEnd,
                discontinuedDrive,
                needs,
                outingsPerYear,
                outingsSpread,
                fetchKm,
                waterKm,
                hardWater,
                typed,
                overrides,
                years,
                other);
    }

    /** Makes the same facts with another state at the end. */
    public OwnershipFacts endingAs(ConditionClass state, boolean noLongerMade) {
        return new OwnershipFacts(
                kind,
                material,
                drive,
                price,
                priceWhy,
                priceNew,
                ageYears,
                state,
                noLongerMade,
                needs,
                outingsPerYear,
                outingsSpread,
                fetchKm,
                waterKm,
                hardWater,
                typed,
                overrides,
                horizonYears,
                rate);
    }

    /** Makes the same facts with outings that may turn out otherwise. */
    public OwnershipFacts withOutingsSpread(Estimate shares) {
        return new OwnershipFacts(
                kind,
                material,
                drive,
                price,
                priceWhy,
                priceNew,
                ageYears,
                conditionAtEnd,
                discontinuedDrive,
                needs,
                outingsPerYear,
                shares,
                fetchKm,
                waterKm,
                hardWater,
                typed,
                overrides,
                horizonYears,
                rate);
    }

    /** Tells how often a need holds, whether told or following from the boat. */
    public double count(Need need) {
        return need.followsFrom(kind, material, drive) ? 1 : needs.getOrDefault(need, 0);
    }
}
