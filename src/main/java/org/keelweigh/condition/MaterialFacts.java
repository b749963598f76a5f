package org.keelweigh.condition;

import org.keelweigh.boat.Coded;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.catalogue.Row;

/**
 * How a hull material shows damage and is put right, from the table {@code materials.csv}.
 *
 * @param material the material
 * @param wallLeastMm the thinnest usual wall, millimetres
 * @param wallMostMm the thickest usual wall, millimetres
 * @param damageShows how damage shows
 * @param joining whether and how it can be welded or glued
 * @param ownerRepair whether an owner can do it
 * @param advice what else to know
 * @param source where this comes from
 */
public record MaterialFacts(
        HullMaterial material,
        double wallLeastMm,
        double wallMostMm,
        String damageShows,
        String joining,
        String ownerRepair,
        String advice,
        String source) {

    private static final double THICKEST_WALL_MM = 50;

    static MaterialFacts of(Row row) {
        double least = row.number("wall_least_mm", 0.1, THICKEST_WALL_MM);
        return new MaterialFacts(
                Coded.parse(HullMaterial.class, row.text("material")),
                least,
                row.number("wall_most_mm", least, THICKEST_WALL_MM),
                row.text("damage_shows"),
                row.text("joining"),
                row.text("owner_repair"),
                row.text("advice"),
                row.text("source"));
    }
}
