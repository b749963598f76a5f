package org.keelweigh.condition;

import java.util.List;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatDefaults;
import org.keelweigh.boat.BoatFacts;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.catalogue.Catalogue;

/** Invented boats for the tests of this package. */
final class SampleBoats {

    private static final BoatDefaults DEFAULTS = BoatDefaults.read(Catalogue.shipped());

    private SampleBoats() {}

    static Boat boat(BoatKind kind, HullMaterial material, DriveKind drive) {
        BoatFacts facts = new BoatFacts(
                kind, material, drive, 2020, null, null, null, null, null, null, null, null, null, null, List.of());
        return DEFAULTS.resolve(facts, 2025);
    }
}
