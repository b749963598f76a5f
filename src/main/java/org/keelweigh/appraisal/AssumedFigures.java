package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.Figure;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.LaunchSite;
import org.keelweigh.shortlist.PersonId;
import org.keelweigh.shortlist.Trip;

/** Lists the figures that were assumed, each with a plausible range. All ranges are estimates from practice, no source. */
final class AssumedFigures {

    private static final double BOAT_SPREAD = 0.2;
    private static final double PRICE_NEW_SPREAD = 0.25;
    private static final double YEARS_SPREAD = 3;
    private static final double USE_SPREAD = 0.5;
    private static final double BODY_SPREAD_KG = 15;
    private static final double HEIGHT_SPREAD_M = 0.1;
    private static final double MOST_RATE = 0.05;
    private static final double MOST_TAX = 0.1;
    private static final double STEEP_PERCENT = 12;
    private static final double WAY_M = 60;
    private static final double FAR_M = 100_000;

    private final Situation situation;
    private final Display display;
    private final List<AssumedFigure> figures = new ArrayList<>();

    private AssumedFigures(Measured measured) {
        this.situation = measured.situation();
        this.display = situation.display();
    }

    static List<AssumedFigure> of(Measured measured) {
        AssumedFigures all = new AssumedFigures(measured);
        measured.boats().forEach(all::boat);
        all.trip();
        all.people();
        return List.copyOf(all.figures);
    }

    private void boat(BoatReport report) {
        Boat boat = report.boat();
        around(report, "listing.askingPrice", "price", report.price(), BOAT_SPREAD, display::money);
        wayToSeller(report);
        modelYear(report, boat.modelYear());
        around(report, "boat.priceNew", "price new", boat.priceNew(), PRICE_NEW_SPREAD, display::money);
        around(report, "boat.lengthM", "length", boat.lengthM(), BOAT_SPREAD, display::length);
        around(report, "boat.beamM", "beam", boat.beamM(), BOAT_SPREAD, display::breadth);
        around(report, "boat.bareMassKg", "mass of the hull", boat.bareMassKg(), BOAT_SPREAD, display::mass);
        around(report, "boat.seatMassKg", "mass of the seats", boat.seatMassKg(), BOAT_SPREAD, display::mass);
        around(report, "boat.driveMassKg", "mass of the drive", boat.driveMassKg(), BOAT_SPREAD, display::mass);
        around(report, "boat.batteryMassKg", "mass of the battery", boat.batteryMassKg(), BOAT_SPREAD, display::mass);
        around(report, "boat.ratedLoadKg", "rated load", boat.ratedLoadKg(), BOAT_SPREAD, display::mass);
        around(report, "boat.draughtM", "draught", boat.draughtM(), BOAT_SPREAD, display::breadth);
    }

    private void wayToSeller(BoatReport report) {
        if (report.candidate().data().listing().distanceM() == null) {
            figures.add(new AssumedFigure(
                    "listing.distanceM",
                    Optional.of(report.id()),
                    report.name() + ": way to the seller",
                    0,
                    0,
                    FAR_M,
                    display::way,
                    (facts, value) -> Supposition.boat(facts, report.id(), "listing.distanceM", value)));
        }
    }

    private void around(
            BoatReport report, String field, String what, Figure figure, double spread, DoubleFunction<String> write) {
        if (figure.isAssumed() && figure.value() > 0) {
            double base = figure.value();
            figures.add(new AssumedFigure(
                    field,
                    Optional.of(report.id()),
                    report.name() + ": " + what,
                    base * (1 - spread),
                    base,
                    base * (1 + spread),
                    write,
                    (facts, value) -> Supposition.boat(facts, report.id(), field, value)));
        }
    }

    private void modelYear(BoatReport report, Figure year) {
        if (year.isAssumed()) {
            double base = Math.rint(year.value());
            figures.add(new AssumedFigure(
                    "boat.modelYear",
                    Optional.of(report.id()),
                    report.name() + ": model year",
                    base - YEARS_SPREAD,
                    base,
                    Math.max(base, Math.min(situation.thisYear(), base + YEARS_SPREAD)),
                    value -> String.valueOf(Math.round(value)),
                    (facts, value) -> Supposition.boat(facts, report.id(), "boat.modelYear", (int) Math.round(value))));
        }
    }

    private void trip() {
        Trip trip = situation.trip();
        if (trip.outingsPerYear() == null) {
            double usual = situation.outingsPerYear();
            tripFigure(
                    "outingsPerYear",
                    "outings a year",
                    usual * (1 - USE_SPREAD),
                    usual,
                    usual * (1 + USE_SPREAD),
                    value -> Display.number(value, 0) + " outings a year");
        }
        if (trip.gearMassKg() == null) {
            double usual = situation.gearMassKg();
            tripFigure(
                    "gearMassKg",
                    "gear aboard",
                    usual * (1 - USE_SPREAD),
                    usual,
                    usual * (1 + USE_SPREAD),
                    display::mass);
        }
        if (trip.discountRate() == null) {
            tripFigure("discountRate", "real discount rate", 0, situation.discountRate(), MOST_RATE, display::percent);
        }
        if (trip.salesTax() == null) {
            tripFigure("salesTax", "sales tax", 0, situation.salesTax(), MOST_TAX, display::percent);
        }
        if (trip.launches().isEmpty()) {
            figures.add(new AssumedFigure(
                    "trip.launches",
                    Optional.empty(),
                    "slope of the way to the water",
                    0,
                    0,
                    STEEP_PERCENT,
                    value -> Display.number(value, 0) + " %",
                    AssumedFigures::withSlope));
        }
    }

    private void tripFigure(
            String field, String name, double low, double base, double high, DoubleFunction<String> write) {
        figures.add(new AssumedFigure(
                "trip." + field,
                Optional.empty(),
                name,
                low,
                base,
                high,
                write,
                (facts, value) -> Supposition.shortlist(facts, "trip." + field, value)));
    }

    private void people() {
        for (Participant each : situation.people()) {
            String field = "people." + each.id().map(PersonId::toString).orElse("somebody");
            if (each.massKg().isAssumed()) {
                personFigure(each, field, "massKg", "body mass", each.massKg().value(), BODY_SPREAD_KG, display::mass);
            }
            if (each.heightM().isAssumed()) {
                personFigure(
                        each, field, "heightM", "height", each.heightM().value(), HEIGHT_SPREAD_M, display::length);
            }
        }
    }

    private void personFigure(
            Participant person,
            String owner,
            String field,
            String what,
            double base,
            double spread,
            DoubleFunction<String> write) {
        figures.add(new AssumedFigure(
                owner + "." + field,
                Optional.empty(),
                person.name() + ": " + what,
                base - spread,
                base,
                base + spread,
                write,
                (facts, value) -> Supposition.person(facts, person, field, value)));
    }

    private static Facts withSlope(Facts facts, double percent) {
        LaunchSite site = new LaunchSite("Launch", WAY_M, "packed-trail", percent, null, null);
        return Supposition.shortlist(facts, "trip.launches", List.of(site));
    }
}
