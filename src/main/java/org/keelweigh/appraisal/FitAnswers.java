package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.Boat;
import org.keelweigh.fit.Aboard;
import org.keelweigh.fit.FitAssessment;
import org.keelweigh.fit.FitCatalogue;
import org.keelweigh.fit.Paddler;
import org.keelweigh.fit.Setting;
import org.keelweigh.haul.CartAnswer;
import org.keelweigh.haul.RoofLoading;
import org.keelweigh.haul.RoofRack;
import org.keelweigh.haul.Stretch;
import org.keelweigh.shortlist.StoragePlace;
import org.keelweigh.shortlist.Trip;

/** Puts the situation into the words that the fit room asks in. */
final class FitAnswers {

    private FitAnswers() {}

    static FitAssessment assess(
            Boat boat,
            Situation situation,
            FitCatalogue catalogue,
            CartAnswer cart,
            List<RoofLoading> loading,
            RoofRack rack) {
        List<Aboard> aboard = new ArrayList<>();
        for (Participant each : situation.paddlers()) {
            int place = situation.people().indexOf(each);
            aboard.add(new Aboard(
                    new Paddler(
                            each.name(),
                            each.massKg().value(),
                            each.heightM().value(),
                            each.data().hipWidthM(),
                            each.use(),
                            each.massKg().isAssumed(),
                            each.data().use() == null),
                    loading.get(place).liftRatio(),
                    cart.haulers().get(place).effort(),
                    Map.of()));
        }
        return FitAssessment.of(catalogue, boat, aboard, setting(situation, rack), situation.display());
    }

    private static Setting setting(Situation situation, RoofRack rack) {
        Trip trip = situation.trip();
        return new Setting(
                situation.gearMassKg(),
                situation.mainWater(),
                situation.hardestWater(),
                trip.weedLevel(),
                trip.leastDepthM(),
                null,
                trip.storageLengthM(),
                trip.storage() == null ? null : trip.storage() != StoragePlace.INDOORS,
                trip.car().lengthM(),
                orNull(rack.ratio()),
                trip.car().barSpreadM(),
                trip.car().canTow(),
                situation.people().size() > 1,
                path(situation.stretches()),
                null,
                null,
                trip.gearMassKg() == null);
    }

    private static @Nullable Double path(List<Stretch> stretches) {
        double sum = 0;
        boolean known = false;
        for (Stretch each : stretches) {
            if (each.distanceM() != null) {
                sum += each.distanceM();
                known = true;
            }
        }
        return known ? sum : null;
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
