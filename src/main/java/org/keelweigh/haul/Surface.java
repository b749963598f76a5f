package org.keelweigh.haul;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.keelweigh.catalogue.Row;
import org.keelweigh.quantity.Estimate;

/**
 * A surface that a launch leads over.
 *
 * @param code its short code
 * @param label its name in plain words
 * @param rolling rolling coefficient by tyre; empty where the boat is carried and not rolled
 * @param bumpFactor by how much bumps multiply the load on the cart
 * @param startFactor by how much setting off multiplies the steady pull
 * @param source where the figures come from
 */
public record Surface(
        String code,
        String label,
        Map<TyreClass, Estimate> rolling,
        double bumpFactor,
        double startFactor,
        String source) {

    private static final double MOST_ROLLING = 1.5;

    public Surface {
        rolling = Map.copyOf(rolling);
    }

    /** Tells the rolling coefficient, or nothing where the boat has to be carried. */
    public Optional<Estimate> rollingOn(TyreClass tyre) {
        return Optional.ofNullable(rolling.get(tyre));
    }

    static Surface of(Row row) {
        Map<TyreClass, Estimate> rolling = new EnumMap<>(TyreClass.class);
        for (TyreClass tyre : TyreClass.values()) {
            row.optional(tyre.code() + "_likely").ifPresent(any -> rolling.put(tyre, coefficient(row, tyre)));
        }
        if (!rolling.isEmpty() && rolling.size() < TyreClass.values().length) {
            throw row.complaint("coefficients are needed for every kind of tyre or for none");
        }
        return new Surface(
                row.text("surface"),
                row.text("label"),
                rolling,
                row.number("bump_factor", 1, 5),
                row.number("start_factor", 1, 4),
                row.text("source"));
    }

    private static Estimate coefficient(Row row, TyreClass tyre) {
        return new Estimate(
                row.number(tyre.code() + "_low", 0, MOST_ROLLING),
                row.number(tyre.code() + "_likely", 0, MOST_ROLLING),
                row.number(tyre.code() + "_high", 0, MOST_ROLLING));
    }
}
