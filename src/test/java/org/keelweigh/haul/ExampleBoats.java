package org.keelweigh.haul;

import java.util.List;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatDefaults;
import org.keelweigh.boat.BoatFacts;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.catalogue.Catalogue;

/** The six invented boats of the example shortlist. */
public final class ExampleBoats {

    private static final BoatDefaults DEFAULTS = BoatDefaults.read(Catalogue.shipped());

    public static final Boat PROPELLER =
            boat(BoatKind.PEDAL_KAYAK, HullMaterial.POLYETHYLENE, DriveKind.PROPELLER, 3.66, 0.86, 41, 3.5, 7.5, 215);
    public static final Boat CANOE =
            boat(BoatKind.CANOE, HullMaterial.ARAMID, DriveKind.NONE, 5.03, 0.89, 19.5, 1, 0, 360);
    public static final Boat NEW_FINS =
            boat(BoatKind.PEDAL_KAYAK, HullMaterial.POLYETHYLENE, DriveKind.FINS, 3.85, 0.84, 39, 3.1, 4.5, 193);
    public static final Boat SHOP_FINS =
            boat(BoatKind.PEDAL_KAYAK, HullMaterial.POLYETHYLENE, DriveKind.FINS, 3.55, 0.84, 31.5, 3, 4.5, 182);
    public static final Boat INFLATABLE =
            boat(BoatKind.INFLATABLE_KAYAK, HullMaterial.DROP_STITCH, DriveKind.NONE, 3.85, 0.8, 14.8, 0.7, 0, 200);
    public static final Boat SIT_ON_TOP =
            boat(BoatKind.SIT_ON_TOP, HullMaterial.THERMOFORMED, DriveKind.NONE, 3.2, 0.76, 20.5, 1, 0, 136);

    private ExampleBoats() {}

    /** Makes the boat by its id in the example, b1 to b6. */
    public static Boat byId(String id) {
        return switch (id) {
            case "b1" -> PROPELLER;
            case "b2" -> CANOE;
            case "b3" -> NEW_FINS;
            case "b4" -> SHOP_FINS;
            case "b5" -> INFLATABLE;
            case "b6" -> SIT_ON_TOP;
            default -> throw new IllegalArgumentException(id);
        };
    }

    /** Makes a boat of which only the kind is known. */
    public static Boat usual(BoatKind kind) {
        return DEFAULTS.resolve(BoatFacts.of(kind), 2026);
    }

    /** Makes a boat with these figures. */
    public static Boat boat(
            BoatKind kind,
            HullMaterial material,
            DriveKind drive,
            double lengthM,
            double beamM,
            double bareKg,
            double seatKg,
            double driveKg,
            double ratedKg) {
        return DEFAULTS.resolve(
                new BoatFacts(
                        kind, material, drive, 2020, null, lengthM, beamM, bareKg, seatKg, driveKg, 0.0, 0.0, ratedKg,
                        null, List.of()),
                2026);
    }
}
