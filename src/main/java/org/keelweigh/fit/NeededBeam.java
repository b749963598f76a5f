package org.keelweigh.fit;

import java.util.Optional;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.Coded;
import org.keelweigh.catalogue.Row;

/**
 * The beam that a use of a hull asks for.
 *
 * @param id its short name
 * @param use the use; empty for any
 * @param hull the sort of hull
 * @param toMassKg for people up to this mass, kilograms
 * @param neededM beam for one adult of up to 80 kg, metres
 * @param source where the figures come from
 */
public record NeededBeam(
        String id, Optional<PaddlingUse> use, Hull hull, double toMassKg, double neededM, String source) {

    /** Added for each kilogram above {@link #REFERENCE_KG}, metres: common practice, no source. */
    public static final double PER_KG_M = 0.0025;
    /** Up to this mass nothing is added, kilograms. */
    public static final double REFERENCE_KG = 80;

    private static final double HEAVIEST_KG = 1000;

    /** Sorts of hull that are judged apart. */
    public enum Hull implements Coded {
        ANY("any"),
        CANOE("canoe"),
        BOARD("board");

        private final String code;

        Hull(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }

        boolean covers(BoatKind kind) {
            return switch (this) {
                case ANY -> true;
                case CANOE -> kind == BoatKind.CANOE;
                case BOARD -> kind.board();
            };
        }
    }

    boolean fits(BoatKind kind, PaddlingUse wanted, double massKg) {
        return hull.covers(kind) && use.map(each -> each == wanted).orElse(true) && massKg <= toMassKg;
    }

    /** Tells the beam that a person of {@code massKg} needs, metres. */
    public double forMassM(double massKg) {
        return neededM + PER_KG_M * Math.max(0, massKg - REFERENCE_KG);
    }

    static NeededBeam of(Row row) {
        return new NeededBeam(
                row.text("row"),
                row.optional("use").map(code -> Coded.parse(PaddlingUse.class, code)),
                Coded.parse(Hull.class, row.text("hull")),
                row.optionalNumber("to_mass_kg", 20, HEAVIEST_KG).orElse(HEAVIEST_KG),
                row.number("needed_mm", 300, 2000) / 1000,
                row.text("source"));
    }
}
