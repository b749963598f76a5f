package org.keelweigh.shortlist;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatDefaults;
import org.keelweigh.boat.BoatFacts;
import org.keelweigh.boat.Figure;
import org.keelweigh.boat.SeatFacts;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.ListingFacts;

/** Looks whether what was typed can be right: refuses the impossible and asks about the unusual, in sentences. */
public final class Plausibility {

    private static final double UNUSUALLY_LOW = 0.5;
    private static final double UNUSUALLY_HIGH = 1.8;

    private final BoatDefaults defaults;
    private final int thisYear;
    private final Display display;

    /** Prepares the looking, against what is usual in {@code thisYear}, with sentences for {@code display}. */
    public Plausibility(BoatDefaults defaults, int thisYear, Display display) {
        this.defaults = defaults;
        this.thisYear = thisYear;
        this.display = display;
    }

    /** Looks at a candidate. */
    public List<Doubt> of(CandidateData data) {
        Doubts doubts = new Doubts();
        doubts.text("name", data.name());
        boat(doubts, data.boat());
        listing(doubts, data.listing());
        doubts.number("daysToLaunch", Bound.DAYS, number(data.daysToLaunch()));
        data.liking().forEach((person, liking) -> doubts.number("liking." + person, Bound.LIKING, number(liking)));
        Set<String> checks = new HashSet<>();
        for (Finding finding : data.findings()) {
            if (!checks.add(finding.check())) {
                doubts.refuse("findings." + finding.check(), "The check " + finding.check() + " is there twice.");
            }
        }
        if (doubts.found.stream().noneMatch(Doubt::refused)) {
            unusual(doubts, data.boat());
        }
        return List.copyOf(doubts.found);
    }

    /** Looks at a person. */
    public List<Doubt> of(PersonData data) {
        Doubts doubts = new Doubts();
        doubts.text("name", data.name());
        doubts.number("massKg", Bound.PERSON_MASS, data.massKg());
        doubts.number("heightM", Bound.PERSON_HEIGHT, data.heightM());
        doubts.number("hipWidthM", Bound.HIP_WIDTH, data.hipWidthM());
        doubts.number("liftLimitKg", Bound.LIFT_LIMIT, data.liftLimitKg());
        doubts.number("haulLimitN", Bound.HAUL_LIMIT, data.haulLimitN());
        data.weights().forEach((criterion, points) -> doubts.number("weights." + criterion, Bound.POINTS, points));
        return List.copyOf(doubts.found);
    }

    /** Looks at a shortlist with its trip. */
    public List<Doubt> of(ShortlistData data) {
        Doubts doubts = new Doubts();
        doubts.text("name", data.name());
        if (!data.currency().matches("[A-Z]{3}")) {
            doubts.refuse("currency", "The currency must be three capital letters such as USD or EUR.");
        }
        Trip trip = data.trip();
        doubts.number("trip.weedLevel", Bound.WEED_LEVEL, number(trip.weedLevel()));
        doubts.number("trip.leastDepthM", Bound.WATER_DEPTH, trip.leastDepthM());
        doubts.number("trip.outingsPerYear", Bound.OUTINGS, trip.outingsPerYear());
        doubts.number("trip.gearMassKg", Bound.GEAR_MASS, trip.gearMassKg());
        doubts.number("trip.gearOnCartKg", Bound.GEAR_MASS, trip.gearOnCartKg());
        doubts.number("trip.storageLengthM", Bound.ROOM_LENGTH, trip.storageLengthM());
        doubts.number("trip.cart.ratedKg", Bound.CART_RATING, trip.cart().ratedKg());
        doubts.number("trip.horizonYears", Bound.YEARS, number(trip.horizonYears()));
        doubts.number("trip.discountRate", Bound.RATE, trip.discountRate());
        doubts.number("trip.salesTax", Bound.RATE, trip.salesTax());
        doubts.number("trip.budget", Bound.MONEY, trip.budget());
        doubts.number("trip.priceFactor", Bound.PRICE_FACTOR, trip.priceFactor());
        car(doubts, trip.car());
        for (int i = 0; i < trip.launches().size(); i++) {
            launch(doubts, "trip.launches[" + i + "].", trip.launches().get(i));
        }
        return List.copyOf(doubts.found);
    }

    private void boat(Doubts doubts, BoatFacts boat) {
        doubts.number("boat.modelYear", Bound.MODEL_YEAR, number(boat.modelYear()));
        if (boat.modelYear() != null && boat.modelYear() > thisYear + 1) {
            doubts.refuse("boat.modelYear", "The model year " + boat.modelYear() + " lies in the future.");
        }
        doubts.number("boat.priceNew", Bound.MONEY, boat.priceNew());
        doubts.number("boat.lengthM", Bound.LENGTH, boat.lengthM());
        doubts.number("boat.beamM", Bound.BEAM, boat.beamM());
        doubts.number("boat.bareMassKg", Bound.BOAT_MASS, boat.bareMassKg());
        doubts.number("boat.seatMassKg", Bound.PART_MASS, boat.seatMassKg());
        doubts.number("boat.driveMassKg", Bound.PART_MASS, boat.driveMassKg());
        doubts.number("boat.batteryMassKg", Bound.PART_MASS, boat.batteryMassKg());
        doubts.number("boat.fittingsMassKg", Bound.PART_MASS, boat.fittingsMassKg());
        doubts.number("boat.ratedLoadKg", Bound.RATED_LOAD, boat.ratedLoadKg());
        doubts.number("boat.draughtM", Bound.DRAUGHT, boat.draughtM());
        for (int i = 0; i < boat.seats().size(); i++) {
            SeatFacts seat = boat.seats().get(i);
            doubts.number("boat.seats[" + i + "].stationM", Bound.STATION, seat.stationM());
            doubts.number("boat.seats[" + i + "].widthM", Bound.SEAT_WIDTH, seat.widthM());
        }
    }

    private void listing(Doubts doubts, ListingFacts listing) {
        doubts.number("listing.askingPrice", Bound.MONEY, listing.askingPrice());
        doubts.number("listing.distanceM", Bound.DISTANCE, listing.distanceM());
        doubts.number("listing.daysListed", Bound.DAYS, number(listing.daysListed()));
        listing.included().forEach((gear, count) -> {
            if (count < 1 || count > 20) {
                doubts.refuse("listing.included." + gear, "The count of " + gear + " must be between 1 and 20.");
            }
        });
    }

    private void car(Doubts doubts, CarFacts car) {
        doubts.number("trip.car.lengthM", Bound.CAR_LENGTH, car.lengthM());
        doubts.number("trip.car.roofLimitKg", Bound.ROOF_LIMIT, car.roofLimitKg());
        doubts.number("trip.car.barHeightM", Bound.BAR_HEIGHT, car.barHeightM());
        doubts.number("trip.car.barSpreadM", Bound.BAR_SPREAD, car.barSpreadM());
        doubts.number("trip.car.rackMassKg", Bound.PART_MASS, car.rackMassKg());
    }

    private void launch(Doubts doubts, String path, LaunchSite launch) {
        doubts.number(path + "distanceM", Bound.DISTANCE, launch.distanceM());
        doubts.number(path + "gradePercent", Bound.GRADE, launch.gradePercent());
        doubts.number(path + "steps", Bound.STEPS, number(launch.steps()));
        doubts.number(path + "stepHeightM", Bound.STEP_HEIGHT, launch.stepHeightM());
    }

    private void unusual(Doubts doubts, BoatFacts typed) {
        BoatFacts bare = new BoatFacts(
                typed.kind(),
                typed.material(),
                typed.drive(),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                List.of());
        Boat usual = defaults.resolve(bare, thisYear);
        doubts.compare("boat.lengthM", "long", typed.lengthM(), usual.lengthM(), Display::length, typed);
        doubts.compare("boat.beamM", "wide", typed.beamM(), usual.beamM(), Display::breadth, typed);
        doubts.compare("boat.bareMassKg", "heavy", typed.bareMassKg(), usual.bareMassKg(), Display::mass, typed);
        doubts.compare(
                "boat.driveMassKg",
                "heavy for the drive",
                typed.driveMassKg(),
                usual.driveMassKg(),
                Display::mass,
                typed);
        doubts.compare(
                "boat.ratedLoadKg",
                "much for the rated load",
                typed.ratedLoadKg(),
                usual.ratedLoadKg(),
                Display::mass,
                typed);
        if (typed.lengthM() != null && typed.beamM() != null && typed.beamM() > typed.lengthM()) {
            doubts.ask("boat.beamM", "The beam is greater than the length: have the two changed places?");
        }
    }

    private static @Nullable Double number(@Nullable Integer value) {
        return value == null ? null : value.doubleValue();
    }

    private final class Doubts {
        private final List<Doubt> found = new ArrayList<>();

        void number(String field, Bound bound, @Nullable Double value) {
            if (value != null) {
                bound.complaint(value, display).ifPresent(sentence -> refuse(field, sentence));
            }
        }

        void text(String field, String value) {
            if (value.isBlank()) {
                refuse(field, "A name is needed.");
            } else if (value.length() > 200) {
                refuse(field, "The name must not be longer than 200 characters.");
            }
        }

        void compare(
                String field,
                String much,
                @Nullable Double value,
                Figure usual,
                BiFunction<Display, Double, String> write,
                BoatFacts boat) {
            if (value == null || usual.value() <= 0 || value == 0) {
                return;
            }
            double ratio = value / usual.value();
            if (ratio < UNUSUALLY_LOW || ratio > UNUSUALLY_HIGH) {
                ask(
                        field,
                        write.apply(display, value) + " is " + (ratio < 1 ? "not very " : "very ") + much + " for a "
                                + boat.kind().label() + "; usual is about " + write.apply(display, usual.value())
                                + ". Is it typed in the right unit?");
            }
        }

        void refuse(String field, String sentence) {
            found.add(new Doubt(field, true, sentence));
        }

        void ask(String field, String sentence) {
            found.add(new Doubt(field, false, sentence));
        }
    }
}
