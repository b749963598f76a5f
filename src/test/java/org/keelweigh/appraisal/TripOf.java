package org.keelweigh.appraisal;

import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.keelweigh.fit.Waters;
import org.keelweigh.shortlist.CarFacts;
import org.keelweigh.shortlist.CartFacts;
import org.keelweigh.shortlist.LaunchSite;
import org.keelweigh.shortlist.StoragePlace;
import org.keelweigh.shortlist.Trip;

/** A trip of which only what is set is known. */
final class TripOf {

    @Nullable
    Waters mainWater;

    @Nullable
    Double gearKg;

    @Nullable
    Double barHeightM;

    @Nullable
    Double roofLimitKg;

    @Nullable
    Double carM;

    @Nullable
    Boolean hasBars;

    @Nullable
    Boolean canTow;

    @Nullable
    Double leastDepthM;

    @Nullable
    Double roomM;

    @Nullable
    StoragePlace storage;

    @Nullable
    Double salesTax;

    @Nullable
    Double budget;

    @Nullable
    Integer horizonYears;

    List<LaunchSite> launches = List.of();

    static Trip with(Consumer<TripOf> said) {
        TripOf trip = new TripOf();
        said.accept(trip);
        return new Trip(
                trip.mainWater,
                null,
                null,
                trip.leastDepthM,
                null,
                trip.gearKg,
                null,
                trip.launches,
                new CarFacts(trip.carM, trip.roofLimitKg, trip.barHeightM, null, trip.hasBars, null, trip.canTow),
                trip.storage,
                trip.roomM,
                CartFacts.unknown(),
                trip.horizonYears,
                null,
                trip.salesTax,
                trip.budget,
                null);
    }
}
