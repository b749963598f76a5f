package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.Figure;
import org.keelweigh.condition.ListingFacts;
import org.keelweigh.shortlist.Display;

/** Says what was assumed about a boat. */
final class BoatAssumptions {

    private final List<Assumption> list = new ArrayList<>();

    private BoatAssumptions() {}

    static List<Assumption> of(Boat boat, ListingFacts listing, Figure price, Display display) {
        BoatAssumptions all = new BoatAssumptions();
        if (boat.materialAssumed()) {
            all.list.add(
                    new Assumption("boat.material", "Hull of " + boat.material().label() + "."));
        }
        all.add("listing.askingPrice", "Price", price, display::money);
        if (listing.distanceM() == null) {
            all.list.add(new Assumption("listing.distanceM", "It is close by: fetching it costs nothing."));
        }
        if (boat.drive() == DriveKind.MOTOR) {
            all.list.add(new Assumption("boat.drive", "A lithium battery, as old as the boat."));
        }
        all.add("boat.modelYear", "Model year", boat.modelYear(), year -> String.valueOf(Math.round(year)));
        all.add("boat.priceNew", "Price new", boat.priceNew(), display::money);
        all.add("boat.lengthM", "Length", boat.lengthM(), display::length);
        all.add("boat.beamM", "Beam", boat.beamM(), display::breadth);
        all.add("boat.bareMassKg", "Hull alone", boat.bareMassKg(), display::mass);
        all.addPart("boat.seatMassKg", "Seats", boat.seatMassKg(), display);
        all.addPart("boat.driveMassKg", "Drive", boat.driveMassKg(), display);
        all.addPart("boat.batteryMassKg", "Battery", boat.batteryMassKg(), display);
        all.add("boat.ratedLoadKg", "Rated load", boat.ratedLoadKg(), display::mass);
        all.add("boat.draughtM", "Draught", boat.draughtM(), display::breadth);
        return List.copyOf(all.list);
    }

    private void addPart(String field, String what, Figure figure, Display display) {
        if (figure.value() > 0) {
            add(field, what, figure, display::mass);
        }
    }

    private void add(String field, String what, Figure figure, Function<Double, String> write) {
        if (figure.isAssumed()) {
            list.add(new Assumption(field, what + " " + write.apply(figure.value()) + " (" + figure.reason() + ")."));
        }
    }
}
