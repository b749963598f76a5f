package org.keelweigh.ui.trip;

import com.vaadin.flow.component.html.H3;
import java.util.LinkedHashMap;
import java.util.Map;
import org.keelweigh.shortlist.Bound;
import org.keelweigh.shortlist.StoragePlace;
import org.keelweigh.ui.format.Quantity;

/** The car, the place at home and the launch cart. */
final class TransportSection extends Sheet {

    TransportSection(Desk desk, Fields fields) {
        super("Car, home and cart", "");
        add(new H3("Car"));
        add(row(
                fields.quantity("trip.car.lengthM", "Length of the car", Quantity.LENGTH, Bound.CAR_LENGTH),
                fields.quantity(
                        "trip.car.roofLimitKg",
                        "Greatest roof load",
                        Quantity.MASS,
                        Bound.ROOF_LIMIT,
                        "From the car's manual; it includes the bars"),
                fields.quantity(
                        "trip.car.barHeightM",
                        "Height of the bars",
                        Quantity.LENGTH,
                        Bound.BAR_HEIGHT,
                        "Above the ground, where you lift to"),
                fields.quantity("trip.car.barSpreadM", "Distance between the bars", Quantity.LENGTH, Bound.BAR_SPREAD),
                fields.quantity("trip.car.rackMassKg", "Mass of bars and cradles", Quantity.MASS, Bound.PART_MASS)));
        add(row(
                fields.flag("trip.car.hasBars", "Roof bars are there already"),
                fields.flag("trip.car.canTow", "The car has a hitch")));
        add(caution(
                "Read the roof limit in the car's manual and on the bars, and take the lower. Tie bow and stern down, and follow local law "
                        + "on overhang and flags."));
        add(new H3("Where the boat lives"));
        add(row(
                fields.choice("trip.storage", "Place", StoragePlace.class, StoragePlace::label),
                fields.quantity(
                        "trip.storageLengthM",
                        "Clear length of the place",
                        Quantity.LENGTH,
                        Bound.ROOM_LENGTH,
                        "Wall to wall, where the boat will lie")));
        add(new H3("Launch cart"));
        Map<String, String> carts = new LinkedHashMap<>();
        desk.appraisal().catalogues().haul().carts().forEach(each -> carts.put(each.code(), each.label()));
        add(row(
                fields.choice("trip.cart.type", "Kind of cart", carts),
                fields.quantity(
                        "trip.cart.ratedKg",
                        "Load by its label",
                        Quantity.MASS,
                        Bound.CART_RATING,
                        "Empty: the usual rating of its kind"),
                fields.flag("trip.cart.owned", "I own it already")));
    }
}
