package org.keelweigh.fit;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.Coded;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.catalogue.Row;

/**
 * How well one sort of boat suits the waters.
 *
 * @param id its short name
 * @param label the sort of boat in plain words
 * @param kind the kind of boat
 * @param material the material it is for; empty for any
 * @param fromLengthM from this length on, metres
 * @param toLengthM up to this length, metres
 * @param points points by water, 0 to 100
 * @param source where the figures come from
 */
public record WaterMatch(
        String id,
        String label,
        BoatKind kind,
        Optional<HullMaterial> material,
        double fromLengthM,
        double toLengthM,
        Map<Waters, Double> points,
        String source) {

    private static final double LONGEST_M = 100;

    public WaterMatch {
        points = Map.copyOf(points);
    }

    /** Tells whether this line is about a boat. */
    public boolean fits(Boat boat) {
        double lengthM = boat.lengthM().value();
        return kind == boat.kind()
                && material.map(each -> each == boat.material()).orElse(true)
                && lengthM >= fromLengthM
                && lengthM <= toLengthM;
    }

    static WaterMatch of(Row row) {
        Map<Waters, Double> points = new EnumMap<>(Waters.class);
        for (Waters water : Waters.values()) {
            points.put(water, row.number(water.code(), 0, 100));
        }
        return new WaterMatch(
                row.text("row"),
                row.text("label"),
                Coded.parse(BoatKind.class, row.text("kind")),
                row.optional("material").map(code -> Coded.parse(HullMaterial.class, code)),
                row.optionalNumber("from_length_m", 0, LONGEST_M).orElse(0.0),
                row.optionalNumber("to_length_m", 0, LONGEST_M).orElse(LONGEST_M),
                points,
                row.text("source"));
    }
}
