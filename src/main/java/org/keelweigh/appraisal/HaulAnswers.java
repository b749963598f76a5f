package org.keelweigh.appraisal;

import java.util.List;
import org.keelweigh.boat.Boat;
import org.keelweigh.haul.CartRequest;
import org.keelweigh.haul.Hauler;
import org.keelweigh.haul.LiftLimits;
import org.keelweigh.haul.Lifter;
import org.keelweigh.haul.OverhangRule;
import org.keelweigh.haul.RoofCar;
import org.keelweigh.haul.RoofLoading;
import org.keelweigh.haul.RoofRack;
import org.keelweigh.shortlist.CarFacts;

/** Puts the situation into the words that the haul room asks in. */
final class HaulAnswers {

    private HaulAnswers() {}

    /** One hauler at a time is asked for, because a boat should not need everybody; help is told where it is needed. */
    static CartRequest request(Boat boat, Situation situation) {
        List<Hauler> haulers = situation.people().stream()
                .map(each -> Hauler.of(each.name(), each.data().haulLimitN()))
                .toList();
        return new CartRequest(
                boat,
                true,
                situation.gearOnCartKg(),
                situation.cart().orElse(null),
                situation.stretches(),
                haulers,
                false);
    }

    static List<RoofLoading> loading(Boat boat, Situation situation, LiftLimits guide) {
        return situation.people().stream()
                .map(each -> RoofLoading.of(
                        boat,
                        situation.trip().car().barHeightM(),
                        new Lifter(
                                each.name(),
                                null,
                                each.data().heightM(),
                                each.data().liftLimitKg()),
                        guide,
                        situation.display()))
                .toList();
    }

    static RoofRack rack(Boat boat, Situation situation) {
        CarFacts car = situation.trip().car();
        return RoofRack.of(
                boat,
                RoofCar.of(car.lengthM(), car.roofLimitKg(), car.barSpreadM(), car.rackMassKg()),
                overhang(situation),
                situation.display());
    }

    private static OverhangRule overhang(Situation situation) {
        return switch (situation.display().currency()) {
            case "GBP" -> OverhangRule.GREAT_BRITAIN;
            case "EUR" -> OverhangRule.EUROPE;
            default -> OverhangRule.USA;
        };
    }
}
