package org.keelweigh.shortlist;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.keelweigh.fit.Waters;

/**
 * How the boat will be used, carried and kept, and in which money terms to think; {@code null} means nobody said.
 *
 * @param mainWater where most outings go
 * @param hardestWater the hardest water planned
 * @param weedLevel how weedy it is, from 0 (none) to 3 (thick)
 * @param leastDepthM usual least depth of the water, metres
 * @param outingsPerYear outings in a year
 * @param gearMassKg gear aboard on the water, kilograms
 * @param gearOnCartKg gear left aboard on the cart, kilograms
 * @param launches the stretches from car to water
 * @param car the car
 * @param storage where the boat lives
 * @param storageLengthM the room's clear length, metres
 * @param cart the launch cart
 * @param horizonYears years of ownership to count
 * @param discountRate real discount rate a year as a share, such as 0.02
 * @param salesTax sales tax as a share of the price where a sale is taxed
 * @param budget cash at hand for everything before the first launch, in the shortlist's currency
 * @param priceFactor units of the shortlist's currency for one US dollar of the price book
 */
public record Trip(
        @Nullable Waters mainWater,
        @Nullable Waters hardestWater,
        @Nullable Integer weedLevel,
        @Nullable Double leastDepthM,
        @Nullable Double outingsPerYear,
        @Nullable Double gearMassKg,
        @Nullable Double gearOnCartKg,
        List<LaunchSite> launches,
        CarFacts car,
        @Nullable StoragePlace storage,
        @Nullable Double storageLengthM,
        CartFacts cart,
        @Nullable Integer horizonYears,
        @Nullable Double discountRate,
        @Nullable Double salesTax,
        @Nullable Double budget,
        @Nullable Double priceFactor) {

    public Trip {
        launches = List.copyOf(launches);
    }

    /** Makes a trip of which nothing is known. */
    public static Trip unknown() {
        return new Trip(
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                List.of(),
                CarFacts.unknown(),
                null,
                null,
                CartFacts.unknown(),
                null,
                null,
                null,
                null,
                null);
    }
}
