package org.keelweigh.haul;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.Boat;
import org.keelweigh.quantity.FigureWriter;

/**
 * Putting a boat on the car's roof, for one person: whole, with a second person, and one end at a time.
 *
 * <p>The boat is lifted stripped. With lengths along the hull from the stern, weight {@code m} at {@code x_g} and grips
 * at {@code x_s} near the stern and {@code x_b} near the bow: the bow alone, stern on the ground, takes {@code m
 * x_g/x_b}; then the stern, the hull resting on the rear bar at {@code x_r}, takes {@code m (x_r − x_g)/(x_r − x_s)};
 * two people share {@code m} by moments.
 *
 * @param lifter the person
 * @param barHeightM height of the bars, metres
 * @param wholeAlone the whole boat alone
 * @param twoPeople the heavier end with a second person
 * @param firstEnd the bow, stern on the ground
 * @param secondEnd the stern, hull on the rear bar
 * @param aidedRatio the second end's load divided by what the person lifts where a loading aid keeps the hands: the limit at
 *     bar height times the guide's greatest value over its value there
 * @param advice what to do, as a sentence
 * @param assumptions what was assumed, as sentences
 * @param cautions what to keep in mind, as sentences
 */
public record RoofLoading(
        Lifter lifter,
        double barHeightM,
        RoofLift wholeAlone,
        RoofLift twoPeople,
        RoofLift firstEnd,
        RoofLift secondEnd,
        double aidedRatio,
        String advice,
        List<String> assumptions,
        List<String> cautions) {

    /** Height of the bars of an ordinary car, metres: estimate. */
    public static final double USUAL_BAR_HEIGHT_M = 1.45;

    private static final double USUAL_BODY_HEIGHT_M = 1.7;
    private static final double STERN_GRIP_SHARE = 0.03;
    private static final double BOW_GRIP_SHARE = 0.97;
    /**
     * Where the hull rests on the rear bar when the stern is lifted, as share of the length: gives 0.43 of the weight.
     */
    private static final double REAR_BAR_SHARE = 0.855;
    /** Hands where the lift begins and ahead of the ankles, centimetres: estimate for a hull held by its edge. */
    private static final double START_CM = 50;

    private static final double AHEAD_AT_START_CM = 38;
    private static final double AHEAD_AT_ROOF_CM = 46;
    /** Above it the equation recommends no lift (its vertical multiplier is 0 there). */
    private static final double HIGHEST_LIFT_M = 1.75;

    private static final double ONE_LIFT_NOW_AND_THEN = 0.2;

    public RoofLoading {
        assumptions = List.copyOf(assumptions);
        cautions = List.copyOf(cautions);
    }

    /**
     * Assesses the lift.
     *
     * @param boat the boat; it is lifted without seat, drive and battery
     * @param barHeightM height of the bars, metres, 0.8 to 3; {@code null} means nobody said
     * @param lifter the person
     * @param guide guide values for people who have tested nothing
     * @param in writes the figures of its sentences
     */
    public static RoofLoading of(
            Boat boat, @Nullable Double barHeightM, Lifter lifter, LiftLimits guide, FigureWriter in) {
        if (barHeightM != null && !(barHeightM >= 0.8 && barHeightM <= 3)) {
            throw new IllegalArgumentException("The bars must be 0.8 to 3 m high, not " + barHeightM);
        }
        List<String> assumed = new ArrayList<>();
        double barsM = barHeightM == null ? USUAL_BAR_HEIGHT_M : barHeightM;
        if (barHeightM == null) {
            assumed.add("Nobody measured the bars; assumed " + in.length(barsM) + " above the ground.");
        }
        double personKg = personLimit(lifter, barsM, guide, assumed, in);
        double recommendedKg = recommendedKg(barsM);
        RigidLoad load = new RigidLoad(boat.strippedMasses());
        double lengthM = boat.lengthM().value();
        double first = Supports.share(load.massKg(), 0, BOW_GRIP_SHARE * lengthM, load.stationM())
                .secondKg();
        double second = Supports.share(
                        load.massKg(), STERN_GRIP_SHARE * lengthM, REAR_BAR_SHARE * lengthM, load.stationM())
                .firstKg();
        double two = Supports.share(
                        load.massKg(), STERN_GRIP_SHARE * lengthM, BOW_GRIP_SHARE * lengthM, load.stationM())
                .heavierKg();
        boolean tested = lifter.testedKg() != null;
        RoofLift whole = RoofLift.of(RoofLift.Method.WHOLE_ALONE, load.massKg(), recommendedKg, personKg, tested);
        RoofLift shared = RoofLift.of(RoofLift.Method.TWO_PEOPLE, two, recommendedKg, personKg, tested);
        RoofLift bow = RoofLift.of(RoofLift.Method.FIRST_END, first, recommendedKg, personKg, tested);
        RoofLift stern = RoofLift.of(RoofLift.Method.SECOND_END, second, recommendedKg, personKg, tested);
        return new RoofLoading(
                lifter,
                barsM,
                whole,
                shared,
                bow,
                stern,
                stern.liftRatio() / relief(lifter, barsM, guide),
                advice(lifter, whole, shared, worse(bow, stern), in),
                assumed,
                cautions(recommendedKg, in));
    }

    /**
     * Tells the lift ratio that boats are compared by: the second end's load divided by the person's limit, the trade's
     * yardstick for loading alone. The verdict is by the heavier of both ends, which is the first. Where the second end alone
     * is "do not try" already, as above the reach of the equation, the ratio is at least {@link RoofLift#MOST_RATIO}: the
     * comparison never calls easy what the verdict forbids.
     */
    public double liftRatio() {
        return secondEnd.band() == LiftBand.NO
                ? Math.max(RoofLift.MOST_RATIO, secondEnd.liftRatio())
                : secondEnd.liftRatio();
    }

    /** Tells how hard it is alone, one end at a time: the worse of both lifts. */
    public LiftBand alone() {
        return worse(firstEnd, secondEnd).band();
    }

    private static RoofLift worse(RoofLift one, RoofLift other) {
        return one.loadKg() >= other.loadKg() ? one : other;
    }

    /** Tells the equation's limit: the lower of its values where the lift begins and where the hands reach the bars. */
    private static double recommendedKg(double barsM) {
        double barsCm = barsM * 100;
        double travel = Math.abs(barsCm - START_CM);
        LiftResult start = evaluate(AHEAD_AT_START_CM, START_CM, travel);
        LiftResult end = evaluate(AHEAD_AT_ROOF_CM, barsCm, travel);
        return Math.min(start.limit(), end.limit());
    }

    private static LiftResult evaluate(double aheadCm, double handsCm, double travelCm) {
        return LiftingEquation.evaluate(
                LiftUnits.METRIC,
                new LiftTask(
                        0,
                        aheadCm,
                        handsCm,
                        START_CM,
                        travelCm,
                        0,
                        ONE_LIFT_NOW_AND_THEN,
                        LiftDuration.SHORT,
                        LiftGrip.FAIR));
    }

    private static double personLimit(
            Lifter lifter, double barsM, LiftLimits guide, List<String> assumed, FigureWriter in) {
        if (lifter.testedKg() != null) {
            return lifter.testedKg();
        }
        LifterKind kind = kind(lifter);
        LiftLimits.Zone zone = guide.zone(heightM(lifter), barsM);
        double limitKg = guide.comfortUpToKg(kind, heightM(lifter), barsM);
        assumed.add(lifter.name() + " has tested no limit; a guide value of " + in.mass(limitKg) + " ("
                + zone.label() + ", " + kind.label()
                + ") stands in. Lift a weighed water container to that height three "
                + "times to know better.");
        return limitKg;
    }

    private static double relief(Lifter lifter, double barsM, LiftLimits guide) {
        return guide.mostComfortKg(kind(lifter)) / guide.comfortUpToKg(kind(lifter), heightM(lifter), barsM);
    }

    private static LifterKind kind(Lifter lifter) {
        return lifter.kind() == null ? LifterKind.WOMEN : lifter.kind();
    }

    private static double heightM(Lifter lifter) {
        return lifter.heightM() == null ? USUAL_BODY_HEIGHT_M : lifter.heightM();
    }

    private static String advice(Lifter lifter, RoofLift whole, RoofLift shared, RoofLift end, FigureWriter in) {
        String who = lifter.name();
        if (whole.band() == LiftBand.COMFORTABLE) {
            return who + " can lift the whole boat alone.";
        }
        if (end.band() == LiftBand.COMFORTABLE) {
            return who + " can load it alone, one end at a time, within the limits.";
        }
        if (end.band() == LiftBand.HARD) {
            return who
                    + " can load it alone, one end at a time, but it is hard; with a second person each holds at most "
                    + in.mass(shared.loadKg()) + ".";
        }
        return shared.band() == LiftBand.NO
                ? who
                        + " should not lift this boat to that height, not with one helper either: use a loading aid or "
                        + "a trailer."
                : who + " should not load it alone: with a second person each holds at most " + in.mass(shared.loadKg())
                        + ".";
    }

    private static List<String> cautions(double recommendedKg, FigureWriter in) {
        List<String> cautions = new ArrayList<>();
        if (recommendedKg == 0) {
            cautions.add("The hands would go above " + in.length(HIGHEST_LIFT_M)
                    + ", where the lifting equation recommends no lift: use a step, a loading arm or a helper.");
        }
        cautions.add(
                "Empty the hull first: the equation does not hold for shifting water, slippery ground or one hand.");
        cautions.addAll(CartAnswer.LIFT_CAUTIONS);
        return cautions;
    }
}
