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

    /**
     * Tells the comfortable load, kilograms, for hands {@code handsM} above the ground: each zone's value at its middle and
     * straight lines between, so that a centimetre of body height or bar never decides.
     */
    public double comfortKg(LifterKind kind, double bodyHeightM, double handsM) {
        double share = handsM / bodyHeightM;
        for (int i = 0; i < zones.size(); i++) {
            if (share <= middle(i)) {
                return i == 0 ? at(0, kind) : between(i, share, kind);
            }
        }
        return at(zones.size() - 1, kind);
    }

    /**
     * Tells the comfortable load for a lift that ends with the hands {@code handsM} above the ground, kilograms: the guide's
     * value there, or its greatest where the lift ends lower than that. So it never grows with the height.
     */
    public double comfortUpToKg(LifterKind kind, double bodyHeightM, double handsM) {
        return comfortKg(kind, bodyHeightM, Math.max(handsM, easiest(kind) * bodyHeightM));
    }

    /** Tells the greatest comfortable load at any height, kilograms: where a loading aid lets the hands stay. */
    public double mostComfortKg(LifterKind kind) {
        return zones.stream()
                .mapToDouble(each -> each.comfortKg().get(kind))
                .max()
                .orElseThrow();
    }

    private double easiest(LifterKind kind) {
        int best = 0;
        for (int i = 1; i < zones.size(); i++) {
            best = at(i, kind) >= at(best, kind) ? i : best;
        }
        return middle(best);
    }

    private double between(int upper, double share, LifterKind kind) {
        double part = (share - middle(upper - 1)) / (middle(upper) - middle(upper - 1));
        return at(upper - 1, kind) + part * (at(upper, kind) - at(upper - 1, kind));
    }

    private double middle(int zone) {
        double from = zone == 0 ? 0 : zones.get(zone - 1).upToShare();
        return (from + zones.get(zone).upToShare()) / 2;
    }

    private double at(int zone, LifterKind kind) {
        return zones.get(zone).comfortKg().get(kind);
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
