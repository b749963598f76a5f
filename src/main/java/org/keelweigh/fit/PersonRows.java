package org.keelweigh.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.quantity.FigureWriter;

/** Fills the rows that depend on who is aboard. */
record PersonRows(FitCatalogue catalogue, Boat boat, List<Aboard> aboard, Setting setting, FigureWriter in) {

    List<FitScore> of(Aboard person) {
        List<FitScore> scores = new ArrayList<>();
        scores.add(capacity(person));
        if (!boat.kind().board()) {
            scores.add(seatWidth(person.paddler()));
            scores.add(measured(person, "leg-room"));
        }
        if (boat.kind() == BoatKind.SIT_INSIDE) {
            scores.add(measured(person, "cockpit-exit"));
            scores.add(measured(person, "foot-height"));
        }
        scores.add(stability(person.paddler()));
        scores.add(given("alone-lift", person.liftRatio(), Boolean.FALSE.equals(setting.helper())));
        scores.add(given("haul", person.haulRatio(), true));
        scores.add(measured(person, "reentry"));
        return scores;
    }

    /** Tells people and gear in one load: everybody when there are seats for all, else this person alone. */
    OptionalDouble aboardKg(Aboard person) {
        List<Aboard> together = aboard.size() <= boat.seats().size() ? aboard : List.of(person);
        double sum = setting.gearKg() == null ? 0 : setting.gearKg();
        for (Aboard each : together) {
            Double massKg = each.paddler().massKg();
            if (massKg == null) {
                return OptionalDouble.empty();
            }
            sum += massKg;
        }
        return OptionalDouble.of(sum);
    }

    private FitScore capacity(Aboard person) {
        FitRow row = catalogue.row("capacity-used");
        OptionalDouble people = aboardKg(person);
        if (people.isEmpty()) {
            return new FitScore.Unknown(row, row.needed());
        }
        // A pedal drive belongs to the boat that was rated; a motor with its battery is added to it.
        double addedKg = boat.drive() == DriveKind.MOTOR
                ? boat.driveMassKg().value() + boat.batteryMassKg().value()
                : 0;
        double loadKg = people.getAsDouble() + addedKg;
        String gear = setting.gearKg() == null ? " Nobody gave the gear's mass; none is counted." : "";
        return FitScore.scored(
                row,
                loadKg / boat.ratedLoadKg().value(),
                boat.ratedLoadKg().isAssumed(),
                !boat.ratedLoadKg().isAssumed(),
                in.mass(loadKg) + " aboard of " + in.mass(boat.ratedLoadKg().value()) + " rated." + gear,
                in);
    }

    private FitScore seatWidth(Paddler paddler) {
        FitRow row = catalogue.row("seat-width");
        if (paddler.hipWidthM() == null) {
            return new FitScore.Unknown(row, paddler.name() + ": " + row.needed());
        }
        Boat.Seat widest = boat.seats().stream()
                .reduce((one, other) -> one.widthM().value() >= other.widthM().value() ? one : other)
                .orElseThrow();
        return FitScore.scored(
                row,
                1000 * (widest.widthM().value() - paddler.hipWidthM()),
                widest.widthM().isAssumed(),
                !widest.widthM().isAssumed(),
                "Seat " + in.small(widest.widthM().value()) + " wide.",
                in);
    }

    private FitScore stability(Paddler paddler) {
        FitRow row = catalogue.row("stability");
        if (paddler.use() == null || paddler.massKg() == null) {
            return new FitScore.Unknown(row, paddler.name() + ": " + row.needed());
        }
        HullShape shape = setting.shape() == null ? HullShape.usual(boat.kind(), paddler.use()) : setting.shape();
        double neededM =
                catalogue.beam(boat.kind(), paddler.use(), paddler.massKg()).forMassM(paddler.massKg())
                        + shape.addedM();
        return FitScore.scored(
                row,
                1000 * (boat.beamM().value() - neededM),
                boat.beamM().isAssumed(),
                !boat.beamM().isAssumed() && firstTimerOrStanding(paddler.use()),
                "Beam " + in.small(boat.beamM().value()) + "; needed " + in.small(neededM) + ": "
                        + paddler.use().label() + ".",
                in);
    }

    private static boolean firstTimerOrStanding(PaddlingUse use) {
        return switch (use) {
            case SIT_CALM_FIRST_TIMER, SIT_CHOP_FIRST_TIMER, STAND -> true;
            case SIT_EXPERIENCED, FISH_SEATED -> false;
        };
    }

    private FitScore measured(Aboard person, String rowId) {
        return given(rowId, person.measured().get(rowId), true);
    }

    private FitScore given(String rowId, @Nullable Double measure, boolean breaks) {
        FitRow row = catalogue.row(rowId);
        return measure == null
                ? new FitScore.Unknown(row, row.needed())
                : FitScore.scored(row, measure, false, breaks, "", in);
    }
}
