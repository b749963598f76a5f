package org.keelweigh.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.Figure;
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

    /** Tells people and gear in one load: this person and the heaviest others there are seats for. */
    OptionalDouble aboardKg(Aboard person) {
        double sum = setting.gearKg() == null ? 0 : setting.gearKg();
        for (Aboard each : together(person)) {
            Double massKg = each.paddler().massKg();
            if (massKg == null) {
                return OptionalDouble.empty();
            }
            sum += massKg;
        }
        return OptionalDouble.of(sum);
    }

    /** Whoever's mass is unknown could be the heaviest. */
    private List<Aboard> together(Aboard person) {
        Stream<Aboard> others = aboard.stream()
                .filter(each -> each != person)
                .sorted(Comparator.comparingDouble(
                        (Aboard each) -> each.paddler().massKg() == null
                                ? Double.NEGATIVE_INFINITY
                                : -each.paddler().massKg()))
                .limit(boat.seats().size() - 1L);
        return Stream.concat(Stream.of(person), others).toList();
    }

    /** Tells the part of the load that somebody gave: it alone may rule a boat out. */
    private double certainKg(Aboard person) {
        double peopleKg = together(person).stream()
                .filter(each -> !each.paddler().massAssumed())
                .mapToDouble(each ->
                        each.paddler().massKg() == null ? 0 : each.paddler().massKg())
                .sum();
        double gearKg = setting.gearKg() == null || setting.gearAssumed() ? 0 : setting.gearKg();
        return peopleKg + gearKg + addedKg(false);
    }

    /** A pedal drive belongs to the boat that was rated; a motor with its battery is added to it. */
    private double addedKg(boolean withAssumed) {
        return boat.drive() != DriveKind.MOTOR
                ? 0
                : Stream.of(boat.driveMassKg(), boat.batteryMassKg())
                        .filter(each -> withAssumed || !each.isAssumed())
                        .mapToDouble(Figure::value)
                        .sum();
    }

    private FitScore capacity(Aboard person) {
        FitRow row = catalogue.row("capacity-used");
        OptionalDouble people = aboardKg(person);
        if (people.isEmpty()) {
            return new FitScore.Unknown(row, row.needed());
        }
        double loadKg = people.getAsDouble() + addedKg(true);
        double certain = certainKg(person) / boat.ratedLoadKg().value();
        String gear = setting.gearKg() == null ? " Nobody gave the gear's mass; none is counted." : "";
        return FitScore.scored(
                row,
                loadKg / boat.ratedLoadKg().value(),
                boat.ratedLoadKg().isAssumed(),
                !boat.ratedLoadKg().isAssumed()
                        && row.dealBreak()
                                .filter(bound -> bound.broken(certain))
                                .isPresent(),
                in.mass(loadKg) + " aboard of " + in.mass(boat.ratedLoadKg().value()) + " rated." + gear,
                in);
    }

    private FitScore seatWidth(Paddler paddler) {
        FitRow row = catalogue.row("seat-width");
        if (paddler.hipWidthM() == null) {
            return new FitScore.Unknown(row, paddler.name() + ": " + row.needed());
        }
        Boat.Seat seat = seatOf(paddler);
        return FitScore.scored(
                row,
                1000 * (seat.widthM().value() - paddler.hipWidthM()),
                seat.widthM().isAssumed(),
                !seat.widthM().isAssumed(),
                "Seat " + in.small(seat.widthM().value()) + " wide.",
                in);
    }

    /** The widest seat goes to the widest hips, the next to the next; whoever has no seat of their own takes the widest. */
    private Boat.Seat seatOf(Paddler paddler) {
        List<Boat.Seat> widestFirst = boat.seats().stream()
                .sorted(Comparator.comparingDouble(each -> -each.widthM().value()))
                .toList();
        List<Paddler> widestHips = aboard.stream()
                .map(Aboard::paddler)
                .sorted(Comparator.comparingDouble(each -> -hips(each)))
                .toList();
        int place = widestHips.indexOf(paddler);
        return widestFirst.get(place < widestFirst.size() ? place : 0);
    }

    private static double hips(Paddler paddler) {
        return paddler.hipWidthM() == null ? 0 : paddler.hipWidthM();
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
                !boat.beamM().isAssumed()
                        && !paddler.massAssumed()
                        && !paddler.useAssumed()
                        && firstTimerOrStanding(paddler.use()),
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
