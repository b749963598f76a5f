package org.keelweigh.haul;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.catalogue.Row;

/**
 * What people lift with comfort, by how high their hands go; a yardstick, not a rule.
 *
 * @param zones from the floor upwards
 */
public record LiftLimits(List<Zone> zones) {

    /**
     * A zone of hand heights.
     *
     * @param code its short code
     * @param label its name in plain words
     * @param upToShare upper edge as share of the lifter's height
     * @param comfortKg comfortable load by who lifts, kilograms
     * @param source where the figures come from
     */
    public record Zone(String code, String label, double upToShare, Map<LifterKind, Double> comfortKg, String source) {

        public Zone {
            comfortKg = Map.copyOf(comfortKg);
        }

        static Zone of(Row row) {
            Map<LifterKind, Double> comfort = new EnumMap<>(LifterKind.class);
            for (LifterKind kind : LifterKind.values()) {
                comfort.put(kind, row.number(kind.code() + "_kg", 0.5, 60));
            }
            return new Zone(
                    row.text("zone"),
                    row.text("label"),
                    row.number("up_to_share", 0.05, 2),
                    comfort,
                    row.text("source"));
        }
    }

    public LiftLimits {
        zones = List.copyOf(zones);
        for (int i = 1; i < zones.size(); i++) {
            if (zones.get(i).upToShare() <= zones.get(i - 1).upToShare()) {
                throw new IllegalArgumentException("lift-limits.csv: the zone \""
                        + zones.get(i).code() + "\" must reach higher than the one before it");
            }
        }
        if (zones.isEmpty()) {
            throw new IllegalArgumentException("lift-limits.csv has no line");
        }
    }

    /**
     * Reads {@code lift-limits.csv}.
     *
     * @throws org.keelweigh.catalogue.CatalogueException if a line is unusable
     */
    public static LiftLimits read(Catalogue catalogue) {
        return new LiftLimits(catalogue.table("lift-limits.csv").unique("zone").map(Zone::of));
    }

    /** Tells the comfortable load, kilograms, for hands {@code handsM} above the ground. */
    public double comfortKg(LifterKind kind, double bodyHeightM, double handsM) {
        return zone(bodyHeightM, handsM).comfortKg().get(kind);
    }

    /** Tells the zone that hands {@code handsM} above the ground are in. */
    public Zone zone(double bodyHeightM, double handsM) {
        double share = handsM / bodyHeightM;
        return zones.stream()
                .filter(each -> share <= each.upToShare())
                .findFirst()
                .orElse(zones.getLast());
    }
}
