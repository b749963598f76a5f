package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.Figure;
import org.keelweigh.fit.PaddlingUse;
import org.keelweigh.fit.Waters;
import org.keelweigh.haul.CartInHand;
import org.keelweigh.haul.HaulCatalogue;
import org.keelweigh.haul.Stretch;
import org.keelweigh.quantity.Angle;
import org.keelweigh.shortlist.CartFacts;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.LaunchSite;
import org.keelweigh.shortlist.PersonData;
import org.keelweigh.shortlist.PersonId;
import org.keelweigh.shortlist.Trip;

/** Fills in what nobody said about the trip and the people, and says so. */
final class SituationResolver {

    private static final double USUAL_OUTINGS = 15;
    private static final double USUAL_GEAR_KG = 10;
    private static final int USUAL_HORIZON = 5;
    private static final double USUAL_RATE = 0.02;
    private static final double USUAL_TAX = 0.06;
    private static final double USUAL_MASS_KG = 78;
    private static final double USUAL_HEIGHT_M = 1.72;

    private final HaulCatalogue haul;
    private final Display display;
    private final List<Assumption> assumptions = new ArrayList<>();

    private SituationResolver(HaulCatalogue haul, Display display) {
        this.haul = haul;
        this.display = display;
    }

    static Situation resolve(Facts facts, HaulCatalogue haul, int thisYear) {
        return new SituationResolver(haul, Display.of(facts.shortlist())).situation(facts, thisYear);
    }

    private Situation situation(Facts facts, int thisYear) {
        Trip trip = facts.shortlist().data().trip();
        Waters main = trip.mainWater() == null ? assumed("trip.mainWater", Waters.POND) : trip.mainWater();
        roofBars(trip);
        return new Situation(
                trip,
                display,
                thisYear,
                main,
                trip.hardestWater() == null ? hardest(main) : trip.hardestWater(),
                number(trip.outingsPerYear(), USUAL_OUTINGS, "trip.outingsPerYear", "outings a year"),
                mass(trip.gearMassKg(), USUAL_GEAR_KG, "trip.gearMassKg", "of gear aboard"),
                mass(trip.gearOnCartKg(), 0, "trip.gearOnCartKg", "of gear left aboard on the cart"),
                stretches(trip.launches()),
                cart(trip.cart()),
                trip.horizonYears() == null ? horizon() : trip.horizonYears(),
                share(trip.discountRate(), USUAL_RATE, "trip.discountRate", "a year above inflation"),
                share(trip.salesTax(), USUAL_TAX, "trip.salesTax", "where a sale is taxed"),
                trip.priceFactor() == null ? priceFactor() : trip.priceFactor(),
                people(facts),
                assumptions);
    }

    private Waters assumed(String field, Waters water) {
        assumptions.add(new Assumption(field, "You go out on a " + water.label() + "."));
        return water;
    }

    private Waters hardest(Waters main) {
        assumptions.add(new Assumption("trip.hardestWater", "Nothing harder than your main water."));
        return main;
    }

    private void roofBars(Trip trip) {
        if (trip.car().hasBars() == null) {
            assumptions.add(new Assumption(
                    "trip.car.hasBars",
                    "The car has no roof bars yet: a set is bought for a boat that rides on the roof."));
        }
    }

    private int horizon() {
        assumptions.add(new Assumption("trip.horizonYears", "You keep the boat for " + USUAL_HORIZON + " years."));
        return USUAL_HORIZON;
    }

    private double priceFactor() {
        assumptions.add(new Assumption("trip.priceFactor", "1 " + display.currency() + " for 1 US dollar."));
        return 1;
    }

    private double share(@Nullable Double typed, double usual, String field, String what) {
        if (typed != null) {
            return typed;
        }
        assumptions.add(new Assumption(field, display.percent(usual) + " " + what + "."));
        return usual;
    }

    private double number(@Nullable Double typed, double usual, String field, String what) {
        if (typed != null) {
            return typed;
        }
        assumptions.add(new Assumption(field, Display.number(usual, 0) + " " + what + "."));
        return usual;
    }

    private double mass(@Nullable Double typed, double usual, String field, String what) {
        if (typed != null) {
            return typed;
        }
        assumptions.add(new Assumption(field, display.mass(usual) + " " + what + "."));
        return usual;
    }

    private List<Stretch> stretches(List<LaunchSite> launches) {
        if (launches.isEmpty()) {
            assumptions.add(new Assumption("trip.launches", "A short, level, packed trail from the car to the water."));
        }
        return launches.stream().map(this::stretch).toList();
    }

    private Stretch stretch(LaunchSite site) {
        String surface = site.surface();
        boolean known = surface != null
                && haul.surfaces().stream().anyMatch(each -> each.code().equals(surface));
        return new Stretch(
                site.name(),
                site.distanceM(),
                known ? surface : null,
                site.gradePercent() == null
                        ? null
                        : Math.abs(Angle.ofGradePercent(site.gradePercent()).rad()),
                site.steps(),
                site.stepHeightM());
    }

    private Optional<CartInHand> cart(CartFacts cart) {
        return haul.carts().stream()
                .filter(type -> type.code().equals(cart.type()))
                .findFirst()
                .map(type -> new CartInHand(type, cart.ratedKg(), cart.ratedKg() != null, null));
    }

    private List<Participant> people(Facts facts) {
        List<Participant> people = new ArrayList<>();
        facts.people().forEach(each -> people.add(participant(Optional.of(each.id()), each.data())));
        if (people.isEmpty()) {
            assumptions.add(new Assumption(
                    "people", "One adult of " + display.mass(USUAL_MASS_KG) + " paddles alone, in a first boat."));
            people.add(participant(Optional.empty(), PersonData.named("You")));
        }
        return people;
    }

    private Participant participant(Optional<PersonId> id, PersonData data) {
        id.ifPresent(known -> {
            if (data.massKg() == null) {
                assumptions.add(new Assumption(
                        "people." + known + ".massKg", data.name() + " weighs " + display.mass(USUAL_MASS_KG) + "."));
            }
            if (data.heightM() == null) {
                assumptions.add(new Assumption(
                        "people." + known + ".heightM",
                        data.name() + " is " + display.length(USUAL_HEIGHT_M) + " tall."));
            }
            if (data.use() == null) {
                assumptions.add(new Assumption(
                        "people." + known + ".use",
                        data.name() + " " + PaddlingUse.SIT_CALM_FIRST_TIMER.label() + "."));
            }
        });
        return new Participant(
                id,
                data,
                figure(data.massKg(), USUAL_MASS_KG),
                figure(data.heightM(), USUAL_HEIGHT_M),
                data.use() == null ? PaddlingUse.SIT_CALM_FIRST_TIMER : data.use());
    }

    private static Figure figure(@Nullable Double typed, double usual) {
        return typed == null ? Figure.assumed(usual, "an average adult") : Figure.typed(typed);
    }
}
