package org.keelweigh.condition;

import java.util.EnumSet;
import java.util.Set;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.Coded;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.catalogue.Row;

/**
 * To which boats something applies.
 *
 * @param kinds the kinds of boat
 * @param materials the hull materials
 * @param drives the drives
 */
public record Applies(Set<BoatKind> kinds, Set<HullMaterial> materials, Set<DriveKind> drives) {

    private static final String ANY = "any";
    private static final String RIGID = "rigid";

    public Applies {
        kinds = Set.copyOf(kinds);
        materials = Set.copyOf(materials);
        drives = Set.copyOf(drives);
    }

    /** Reads the columns {@code kinds}, {@code materials} and {@code drives}. */
    static Applies of(Row row) {
        return new Applies(
                kinds(row), codes(row, "materials", HullMaterial.class), codes(row, "drives", DriveKind.class));
    }

    /** Reads the column {@code kinds}: codes, {@code any}, or {@code rigid} for all that keep their shape without air. */
    static Set<BoatKind> kinds(Row row) {
        if (row.text("kinds").equals(RIGID)) {
            Set<BoatKind> rigid = EnumSet.allOf(BoatKind.class);
            rigid.removeIf(kind -> !kind.rigid());
            return rigid;
        }
        return codes(row, "kinds", BoatKind.class);
    }

    private static <E extends Enum<E> & Coded> Set<E> codes(Row row, String column, Class<E> type) {
        if (row.text(column).equals(ANY)) {
            return EnumSet.allOf(type);
        }
        Set<E> found = EnumSet.noneOf(type);
        row.words(column).forEach(word -> found.add(Coded.parse(type, word)));
        return found;
    }

    /** Tells whether it applies to {@code boat}. */
    public boolean to(Boat boat) {
        return kinds.contains(boat.kind()) && materials.contains(boat.material()) && drives.contains(boat.drive());
    }
}
