package org.keelweigh.haul;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.quantity.FigureWriter;
import org.keelweigh.quantity.Speed;

/**
 * A boat on a car's roof.
 *
 * @param loadKg boat without its removable parts, with bars and cradles, kilograms
 * @param limitKg the lowest of the ratings given for roof, bars, feet and cradles, kilograms; nothing if none was given
 * @param ratio load divided by limit; above 1 is too much
 * @param spreadShare distance between the bars divided by the boat's length
 * @param rearOverhangM past the rear bumper, metres, 0 or more; the boat's middle rests between the bars
 * @param frontOverhangM past the front bumper, metres, 0 or more
 * @param endLines why bow and stern lines are needed, as sentences; empty when only advisable
 * @param advice straps and which way up, as sentences
 * @param warnings what is wrong or close to it, as sentences
 * @param unknown what would be needed to say more, as sentences
 * @param cautions what to keep in mind, as sentences
 */
public record RoofRack(
        double loadKg,
        OptionalDouble limitKg,
        OptionalDouble ratio,
        OptionalDouble spreadShare,
        OptionalDouble rearOverhangM,
        OptionalDouble frontOverhangM,
        List<String> endLines,
        List<String> advice,
        List<String> warnings,
        List<String> unknown,
        List<String> cautions) {

    /** Bars 6 and cradles 4 kg: estimate. */
    public static final double USUAL_RACK_KG = 10;

    private static final double LEAST_SPREAD_M = 0.6;
    private static final double LEAST_SPREAD_SHARE = 0.25;
    private static final double SHORT_SPREAD_M = 0.75;
    private static final double LONG_OVERHANG_M = 1.0;
    private static final double LINES_FROM_M_PER_S = Speed.ofKmPerHour(80).mPerS();

    public RoofRack {
        endLines = List.copyOf(endLines);
        advice = List.copyOf(advice);
        warnings = List.copyOf(warnings);
        unknown = List.copyOf(unknown);
        cautions = List.copyOf(cautions);
    }

    /** Assesses a boat on a car, by a rule about overhang; {@code in} writes the figures of its sentences. */
    public static RoofRack of(Boat boat, RoofCar car, OverhangRule rule, FigureWriter in) {
        List<String> unknown = new ArrayList<>();
        List<String> warnings = new ArrayList<>();
        double rackKg = car.rackMassKg() == null ? USUAL_RACK_KG : car.rackMassKg();
        if (car.rackMassKg() == null) {
            unknown.add("Nobody weighed bars and cradles; assumed " + in.mass(rackKg) + ".");
        }
        double loadKg = boat.strippedMassKg() + rackKg;
        OptionalDouble limit = lowest(car);
        if (limit.isEmpty()) {
            unknown.add("The roof limit in the car's manual; " + in.mass(50) + " to " + in.mass(100) + " is common, "
                    + in.mass(75) + " most so.");
        }
        OptionalDouble ratio =
                limit.isPresent() ? OptionalDouble.of(loadKg / limit.getAsDouble()) : OptionalDouble.empty();
        ratio.ifPresent(value -> warnOfLoad(value, boat.strippedMassKg(), loadKg, limit.getAsDouble(), warnings, in));
        OptionalDouble spread = spread(boat, car, warnings, unknown, in);
        Overhang overhang = Overhang.of(boat, car);
        overhang.warn(rule, warnings, unknown, in);
        return new RoofRack(
                loadKg,
                limit,
                ratio,
                spread,
                overhang.rearM,
                overhang.frontM,
                endLines(boat, car, overhang, in),
                advice(boat, in),
                warnings,
                unknown,
                CartAnswer.LIFT_CAUTIONS);
    }

    private static OptionalDouble lowest(RoofCar car) {
        return Stream.of(
                        Optional.ofNullable(car.roofLimitKg()),
                        Optional.ofNullable(car.barsLimitKg()),
                        Optional.ofNullable(car.feetLimitKg()),
                        Optional.ofNullable(car.cradleLimitKg()))
                .flatMap(Optional::stream)
                .mapToDouble(Double::doubleValue)
                .min();
    }

    private static void warnOfLoad(
            double ratio, double boatKg, double loadKg, double limitKg, List<String> warnings, FigureWriter in) {
        if (ratio > 1) {
            warnings.add("Boat, bars and cradles weigh " + in.mass(loadKg) + ", more than the " + in.mass(limitKg)
                    + " allowed: strip the boat further or take a trailer. "
                    + Trailer.usualUnder(boatKg).placing(in));
        } else if (ratio > 0.9) {
            warnings.add("Boat, bars and cradles use " + in.ratio(ratio) + " of the limit: weigh them.");
        }
    }

    private static OptionalDouble spread(
            Boat boat, RoofCar car, List<String> warnings, List<String> unknown, FigureWriter in) {
        if (car.barSpreadM() == null) {
            unknown.add("The distance between the bars.");
            return OptionalDouble.empty();
        }
        double share = car.barSpreadM() / boat.lengthM().value();
        if (car.barSpreadM() < LEAST_SPREAD_M || share < LEAST_SPREAD_SHARE) {
            warnings.add("The bars stand " + in.length(car.barSpreadM()) + " apart, " + in.ratio(share)
                    + " of the boat's length; a quarter to a third, and at least " + in.length(LEAST_SPREAD_M)
                    + ", holds it steadier.");
        }
        return OptionalDouble.of(share);
    }

    private static List<String> endLines(Boat boat, RoofCar car, Overhang overhang, FigureWriter in) {
        List<String> reasons = new ArrayList<>();
        double pastBumper = DoubleStream.of(overhang.rearM.orElse(0), overhang.frontM.orElse(0))
                .max()
                .orElse(0);
        if (pastBumper > LONG_OVERHANG_M) {
            reasons.add("It reaches " + in.length(pastBumper) + " past a bumper.");
        }
        if (car.barSpreadM() != null) {
            double pastBar = (boat.lengthM().value() - car.barSpreadM()) / 2;
            if (pastBar > LONG_OVERHANG_M) {
                reasons.add("It reaches " + in.length(pastBar) + " past each bar.");
            }
            if (car.barSpreadM() < SHORT_SPREAD_M) {
                reasons.add("The bars stand less than " + in.length(SHORT_SPREAD_M) + " apart.");
            }
        }
        return reasons;
    }

    private static List<String> advice(Boat boat, FigureWriter in) {
        List<String> advice = new ArrayList<>();
        advice.add(
                "Two cam straps " + in.small(0.025) + " wide, one twist in each against humming, pulled tight by hand"
                        + (crushable(boat) ? "; no ratchets, they crush this hull." : "."));
        advice.add("In hard braking straps and lines have to hold " + in.force(RoadLoad.brakingN(boat.strippedMassKg()))
                + " forward.");
        advice.add("Bow and stern lines to bolted loops above " + in.speed(LINES_FROM_M_PER_S)
                + " and in gusts; check all after " + in.way(10_000) + ".");
        advice.add(
                switch (boat.kind()) {
                    case CANOE -> "Gunwales down on the bars.";
                    case INFLATABLE_BOARD, INFLATABLE_KAYAK -> "Better deflated inside the car.";
                    case SIT_ON_TOP, SIT_INSIDE, PEDAL_KAYAK ->
                        boat.material().polyethylene()
                                ? "On its edge or hull up; a strap on a hot hull dents it."
                                : "Hull down in shaped cradles.";
                    case HARD_BOARD -> "Deck down on pads, fins forward and up.";
                    case ROWING_BOAT -> "Hull up, if the roof may carry it at all.";
                });
        return advice;
    }

    private static boolean crushable(Boat boat) {
        return boat.kind() != BoatKind.ROWING_BOAT || boat.material().polyethylene();
    }

    /** How far the boat reaches past the bumpers when its middle rests between the bars. */
    private record Overhang(OptionalDouble rearM, OptionalDouble frontM, boolean middleAssumed) {

        static Overhang of(Boat boat, RoofCar car) {
            if (car.lengthM() == null) {
                return new Overhang(OptionalDouble.empty(), OptionalDouble.empty(), false);
            }
            Double given = car.barsMiddleFromRearM();
            double middle = given == null ? car.lengthM() / 2 : given;
            double half = boat.lengthM().value() / 2;
            return new Overhang(
                    OptionalDouble.of(Math.max(0, half - middle)),
                    OptionalDouble.of(Math.max(0, half - (car.lengthM() - middle))),
                    given == null);
        }

        void warn(OverhangRule rule, List<String> warnings, List<String> unknown, FigureWriter in) {
            if (rearM.isEmpty()) {
                unknown.add("The length of the car, for the overhang.");
                return;
            }
            if (middleAssumed) {
                unknown.add("Where the bars stand; assumed that their middle is the middle of the car.");
            }
            if (rule.marksRear(rearM.getAsDouble())) {
                warnings.add(
                        "It reaches " + in.length(rearM.getAsDouble()) + " past the rear bumper. " + rule.marking(in));
            }
            if (rule.marksFront(frontM.orElse(0))) {
                warnings.add(
                        "It reaches " + in.length(frontM.orElse(0)) + " past the front bumper. " + rule.marking(in));
            }
        }
    }
}
