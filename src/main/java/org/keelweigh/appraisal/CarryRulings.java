package org.keelweigh.appraisal;

import java.util.Map;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.Figure;
import org.keelweigh.cost.Need;
import org.keelweigh.haul.CartPlan;
import org.keelweigh.haul.CartVerdict;
import org.keelweigh.haul.RoofLift;
import org.keelweigh.haul.RoofLoading;
import org.keelweigh.haul.RoofRack;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.StoragePlace;
import org.keelweigh.shortlist.Trip;

/** The hard rules about lifting, hauling, carrying and keeping a boat that keeps its shape. */
final class CarryRulings {

    private final Situation situation;
    private final Trip trip;
    private final Display display;
    private final BoatMeasurer.Evidence found;
    private final Boat boat;
    private final Rulings.Broken broken;

    CarryRulings(Situation situation, BoatMeasurer.Evidence found, Rulings.Broken broken) {
        this.situation = situation;
        this.trip = situation.trip();
        this.display = situation.display();
        this.found = found;
        this.boat = found.boat();
        this.broken = broken;
    }

    void look() {
        haul();
        if (boat.kind().rigid()) {
            lift();
            roof();
            car();
            storage();
        }
    }

    /** Two people are two people: only what no two can do, over a way and with limits that somebody gave, is out. */
    private void haul() {
        boolean tested =
                situation.people().stream().allMatch(each -> each.data().haulLimitN() != null);
        boolean wayKnown = !trip.launches().isEmpty()
                && trip.launches().stream()
                        .allMatch(each ->
                                each.surface() != null && each.distanceM() != null && each.gradePercent() != null);
        if (found.cart() instanceof CartPlan plan
                && plan.verdict() == CartVerdict.NOT_BY_CART
                && tested
                && wayKnown
                && weighed()) {
            broken.add(
                    Rule.HAUL,
                    plan.reasons().getFirst(),
                    "Launch somewhere else, or take a cart made for that ground and load, and say so here.");
        }
    }

    private boolean weighed() {
        boolean motor = boat.drive() == DriveKind.MOTOR;
        return known(boat.bareMassKg())
                && (boat.drive() == DriveKind.NONE || known(boat.driveMassKg()))
                && (!motor || known(boat.batteryMassKg()));
    }

    /** A lone person with a tested limit, and more at one end than even a loading aid makes up for. */
    private void lift() {
        RoofLoading loading = found.loading().getFirst();
        boolean tested = loading.secondEnd().tested() && trip.car().barHeightM() != null && known(boat.bareMassKg());
        Map<Need, Integer> needs = found.ownership().needs();
        boolean trailer = canTow()
                || needs.containsKey(Need.TRAILER)
                || found.candidate().data().listing().included().getOrDefault("trailer", 0) > 0;
        boolean alone = situation.people().size() < 2;
        if (tested && alone && !trailer && loading.aidedRatio() > RoofLift.MOST_RATIO) {
            broken.add(
                    Rule.LIFT,
                    loading.lifter().name() + " would lift "
                            + display.mass(loading.secondEnd().loadKg()) + " at one end, "
                            + Display.number(loading.secondEnd().liftRatio(), 1)
                            + " times their tested limit; a loading aid does not make up for so much.",
                    "Name a second person who helps, or use a trailer.");
        }
    }

    /** Bars and cradles count as far as somebody weighed them. */
    private void roof() {
        double limitKg = found.rack().limitKg().orElse(Double.POSITIVE_INFINITY);
        double certainKg = found.rack().loadKg() - (trip.car().rackMassKg() == null ? RoofRack.USUAL_RACK_KG : 0);
        if (known(boat.bareMassKg()) && !canTow() && certainKg > limitKg) {
            broken.add(
                    Rule.ROOF,
                    "On the roof it weighs " + display.mass(found.rack().loadKg())
                            + " with the rack, and the roof may carry " + display.mass(limitKg) + ".",
                    "Use a trailer or another car.");
        }
    }

    private void car() {
        Double carM = trip.car().lengthM();
        boolean tooLong = found.fit()
                .scored("car-length")
                .filter(each -> each.dealBreaker().isPresent())
                .isPresent();
        if (tooLong && carM != null) {
            broken.add(
                    Rule.CAR,
                    "It is " + display.length(boat.lengthM().value()) + " long, "
                            + Display.number(boat.lengthM().value() / carM, 2) + " times the car's "
                            + display.length(carM) + ".",
                    "Use a trailer or a longer car, or learn what the law where you drive allows, and say so here.");
        }
    }

    private void storage() {
        Double roomM = trip.storageLengthM();
        double lengthM = boat.lengthM().value();
        boolean fixed = trip.storage() == null || trip.storage() == StoragePlace.INDOORS;
        if (known(boat.lengthM()) && roomM != null && fixed && lengthM > roomM) {
            broken.add(
                    Rule.STORAGE,
                    "It is " + display.length(lengthM) + " long, and its room " + display.length(roomM) + ".",
                    "Find another place for it, such as a covered wall outside, and say so.");
        }
    }

    private boolean canTow() {
        return Boolean.TRUE.equals(trip.car().canTow());
    }

    private static boolean known(Figure figure) {
        return !figure.isAssumed();
    }
}
