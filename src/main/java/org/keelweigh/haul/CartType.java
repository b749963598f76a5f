package org.keelweigh.haul;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.Coded;
import org.keelweigh.catalogue.Row;
import org.keelweigh.quantity.Estimate;

/**
 * A kind of launch cart.
 *
 * @param code its short code
 * @param label its name in plain words
 * @param hold how it holds the boat
 * @param tyre its tyres
 * @param ratedKg what carts of this kind are usually rated for, kilograms
 * @param wheelRadiusM wheel radius, metres
 * @param wheels number of wheels
 * @param bedAboveAxleM height of the hull's underside above the axle, metres
 * @param fixedAxleShare where the axle has to stand, as share of the boat's length from the stern; empty where it moves
 * @param price usual price, USD of 2025
 * @param fits the kinds of boat it can hold
 * @param avoid codes of the surfaces it should not go over
 * @param harm what it does to the hull, as a sentence
 * @param source where the figures come from
 */
public record CartType(
        String code,
        String label,
        CartHold hold,
        TyreClass tyre,
        Estimate ratedKg,
        double wheelRadiusM,
        int wheels,
        double bedAboveAxleM,
        Optional<Double> fixedAxleShare,
        Estimate price,
        Set<BoatKind> fits,
        Set<String> avoid,
        String harm,
        String source) {

    private static final double HEAVIEST_RATING_KG = 400;
    private static final double DEAREST = 5000;

    public CartType {
        fits = Set.copyOf(fits);
        avoid = Set.copyOf(avoid);
    }

    /** Tells whether it loads the rims of the drain holes of a boat of this kind. */
    public boolean loadsDrainHoles(BoatKind kind) {
        return hold == CartHold.POSTS && kind.selfDraining();
    }

    static CartType of(Row row) {
        Set<BoatKind> fits = new HashSet<>();
        row.words("fits").forEach(code -> fits.add(Coded.parse(BoatKind.class, code)));
        return new CartType(
                row.text("cart"),
                row.text("label"),
                Coded.parse(CartHold.class, row.text("hold")),
                Coded.parse(TyreClass.class, row.text("tyre")),
                estimate(row, "rated_", "_kg", HEAVIEST_RATING_KG),
                row.number("wheel_mm", 30, 800) / 2000,
                (int) row.number("wheels", 1, 4),
                row.number("bed_above_axle_m", 0, 0.6),
                row.optionalNumber("axle_share", 0, 0.9),
                estimate(row, "price_", "", DEAREST),
                fits,
                Set.copyOf(row.words("avoid")),
                row.text("harm"),
                row.text("source"));
    }

    private static Estimate estimate(Row row, String prefix, String suffix, double most) {
        return new Estimate(
                row.number(prefix + "low" + suffix, 0, most),
                row.number(prefix + "likely" + suffix, 0, most),
                row.number(prefix + "high" + suffix, 0, most));
    }
}
