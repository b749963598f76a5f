package org.keelweigh.cost;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;

/**
 * What decides the going price of one used boat.
 *
 * @param kind what kind of boat
 * @param material what the hull is made of
 * @param drive what moves it beside a paddle or oars
 * @param priceNew today's price new, or of the nearest boat still made; above 0
 * @param ageYears age; at least 0
 * @param condition overall state, before the repairs listed in {@code likelyRepairs}
 * @param month month of sale in the northern hemisphere, 1..12; absent for a price free of season
 * @param discontinuedDrive whether the drive is no longer made
 * @param receipts whether there were at most two owners and receipts are there
 * @param farFromWater whether it is sold far from water
 * @param extras what comes with it
 * @param likelyRepairs likely cost of what is known to need repair; at least 0
 */
public record PricedBoat(
        BoatKind kind,
        HullMaterial material,
        DriveKind drive,
        double priceNew,
        double ageYears,
        ConditionClass condition,
        @Nullable Integer month,
        boolean discontinuedDrive,
        boolean receipts,
        boolean farFromWater,
        List<Extra> extras,
        double likelyRepairs) {

    public PricedBoat {
        extras = List.copyOf(extras);
        Amounts.requirePositive("price new", priceNew);
        Amounts.requireNotNegative("age in years", ageYears);
        Amounts.requireNotNegative("likely cost of repairs", likelyRepairs);
        if (month != null && (month < 1 || month > 12)) {
            throw new IllegalArgumentException("The month must be 1 to 12, not " + month);
        }
    }

    /**
     * Something that comes with the boat.
     *
     * @param label what it is, as a phrase
     * @param priceNew its price new; at least 0
     * @param useful whether this buyer would otherwise buy one
     */
    public record Extra(String label, double priceNew, boolean useful) {

        public Extra {
            Amounts.requireNotNegative("price of an extra", priceNew);
        }
    }

    /** Makes a boat in a plain state: no season, no story, no extras, no repairs. */
    public static PricedBoat plain(
            BoatKind kind,
            HullMaterial material,
            DriveKind drive,
            double priceNew,
            double ageYears,
            ConditionClass condition) {
        return new PricedBoat(
                kind, material, drive, priceNew, ageYears, condition, null, false, false, false, List.of(), 0);
    }
}
