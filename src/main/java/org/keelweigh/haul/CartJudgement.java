package org.keelweigh.haul;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.keelweigh.quantity.FigureWriter;

/** Weighs the figures of a way against people and cart. */
record CartJudgement(
        CartVerdict verdict,
        List<String> reasons,
        double neededRatingKg,
        List<HaulerAnswer> haulers,
        List<String> cautions) {

    /** Two people together keep up so many times what one does (common practice, no source). */
    static final double TWO_PEOPLE = 1.8;

    /** Beyond twice the limit it does not matter how much; so a kerb that nothing climbs stays a number. */
    private static final double MOST_EFFORT = 2;

    private static final double TALLEST_KERB_ALONE_M = 0.06;
    private static final double STEEPEST_ALONE_RAD = Math.atan(0.12);
    private static final double HEAVIEST_STEEP_ALONE_KG = 45;
    /** Between knuckle and elbow, average man: estimate from workplace guidance, as remembered. */
    private static final double CARRIED_EACH_KG = 25;
    /** The slope's own rounding must not decide: 12 % typed in percent stays 12 %. */
    private static final double SLOPE_TOLERANCE_RAD = 1e-9;

    static CartJudgement of(Rig rig, CartInHand cart, List<Leg> legs, List<Hauler> haulers, FigureWriter in) {
        double needed =
                legs.stream().mapToDouble(CartJudgement::neededRating).max().orElse(0);
        List<String> shared = sharedReasons(rig, legs, in);
        List<HaulerAnswer> answers =
                haulers.stream().map(each -> answer(each, legs, shared, in)).toList();
        List<String> impossible = impossible(rig, cart, legs, haulers, needed, in);
        List<String> cautions = cautions(rig, cart, legs, needed, in);
        if (!impossible.isEmpty()) {
            List<HaulerAnswer> inVain =
                    answers.stream().map(each -> each.withEffort(MOST_EFFORT)).toList();
            return new CartJudgement(CartVerdict.NOT_BY_CART, impossible, needed, inVain, cautions);
        }
        Optional<HaulerAnswer> alone =
                answers.stream().filter(HaulerAnswer::alone).findFirst();
        if (alone.isPresent()) {
            return new CartJudgement(
                    CartVerdict.ONE_PERSON, whoAlone(alone.get(), answers, legs, in), needed, answers, cautions);
        }
        List<String> why = answers.stream()
                .flatMap(each -> each.needsHelp().stream())
                .distinct()
                .toList();
        return new CartJudgement(CartVerdict.TWO_PEOPLE, why, needed, answers, cautions);
    }

    private static double neededRating(Leg leg) {
        return switch (leg) {
            case Leg.Rolled rolled -> rolled.neededRatingKg();
            case Leg.Carried carried -> 0;
        };
    }

    private static List<String> whoAlone(
            HaulerAnswer alone, List<HaulerAnswer> answers, List<Leg> legs, FigureWriter in) {
        Stream<String> others = answers.stream()
                .filter(each -> !each.alone())
                .map(each -> each.hauler().name() + " would need help. "
                        + each.needsHelp().getFirst());
        return Stream.concat(Stream.of(easy(alone, legs, in)), others).toList();
    }

    private static String easy(HaulerAnswer alone, List<Leg> legs, FigureWriter in) {
        double pullN =
                rolled(legs).mapToDouble(each -> each.pullN().likely()).max().orElse(0);
        return alone.hauler().name() + " can do it alone: the greatest steady pull is " + in.force(pullN) + ", "
                + in.ratio(alone.ratio()) + " of what they keep up on that stretch.";
    }

    /** What calls for two people whoever they are. */
    private static List<String> sharedReasons(Rig rig, List<Leg> legs, FigureWriter in) {
        List<String> reasons = new ArrayList<>();
        for (Leg leg : legs) {
            Ground ground = leg.ground();
            switch (leg) {
                case Leg.Carried carried -> reasons.add(carryReason(carried, in));
                case Leg.Rolled rolled -> {
                    if (ground.stepHeightM() > TALLEST_KERB_ALONE_M) {
                        reasons.add(ground.name() + ": a step of " + in.small(ground.stepHeightM())
                                + " is too tall to drag the wheels over alone; lift one end over it.");
                    }
                    if (ground.slopeRad() > STEEPEST_ALONE_RAD + SLOPE_TOLERANCE_RAD
                            && rig.load().massKg() > HEAVIEST_STEEP_ALONE_KG) {
                        reasons.add(ground.name() + ": a slope of " + in.percent(Math.tan(ground.slopeRad())) + " with "
                                + in.mass(rig.load().massKg())
                                + " is too much to hold alone if a foot slips.");
                    }
                }
            }
        }
        return reasons;
    }

    private static String carryReason(Leg.Carried carried, FigureWriter in) {
        Ground ground = carried.ground();
        String what = ground.steps() > 0
                ? ground.steps() + " steps"
                : ground.surface().label();
        return ground.name() + ": " + what + " cannot be rolled over; empty and strip the boat and carry it, "
                + in.mass(carried.eachKg()) + " for each of two.";
    }

    private static HaulerAnswer answer(Hauler hauler, List<Leg> legs, List<String> shared, FigureWriter in) {
        List<String> help = new ArrayList<>(shared);
        double ratio = 0;
        double effort = 0;
        double restAfterM = hauler.restAfterM(0);
        for (Leg.Rolled leg : rolled(legs).toList()) {
            double pullN = leg.pullN().likely();
            double here = hauler.ratio(pullN, leg.ground().distanceM());
            if (here >= ratio) {
                ratio = here;
                restAfterM = hauler.restAfterM(pullN);
            }
            effort = Math.max(effort, Math.min(MOST_EFFORT, Math.max(here, atOnce(hauler, leg))));
            help.addAll(tooMuchFor(hauler, leg, here, in));
        }
        return new HaulerAnswer(hauler, ratio, effort, restAfterM, help);
    }

    /** What takes a moment's strength, as a share of what this person has for it. */
    private static double atOnce(Hauler hauler, Leg.Rolled leg) {
        double shortN = Math.max(leg.startN(), Math.max(leg.holdBackN(), leg.kerbN()));
        return Math.max(shortN / (Hauler.SHORT_EFFORT * hauler.pullLimitN()), handN(leg) / hauler.handLimitN());
    }

    private static double handN(Leg.Rolled leg) {
        return Math.max(Math.abs(leg.up().handN()), Math.abs(leg.down().handN()));
    }

    private static List<String> tooMuchFor(Hauler hauler, Leg.Rolled leg, double ratio, FigureWriter in) {
        List<String> reasons = new ArrayList<>();
        String where = leg.ground().name() + ": ";
        double shortLimitN = Hauler.SHORT_EFFORT * hauler.pullLimitN();
        if (ratio > 1) {
            reasons.add(where + "the steady pull of " + in.force(leg.pullN().likely()) + " over "
                    + in.way(leg.ground().distanceM()) + " is " + in.ratio(ratio) + " of what "
                    + hauler.name() + " keeps up.");
        }
        if (leg.startN() > shortLimitN) {
            reasons.add(where + "setting off takes " + in.force(leg.startN()) + ", more than twice the limit of "
                    + hauler.name() + ".");
        }
        if (leg.holdBackN() > shortLimitN) {
            reasons.add(where + "going down, " + in.force(leg.holdBackN()) + " must be held back, more than twice "
                    + "the limit of " + hauler.name() + ".");
        }
        if (leg.kerbN() > shortLimitN) {
            reasons.add(where + "the step takes "
                    + (Double.isInfinite(leg.kerbN()) ? "more than any pull" : in.force(leg.kerbN()))
                    + "; lift the end over it or go backwards.");
        }
        double handN = handN(leg);
        if (handN > hauler.handLimitN()) {
            reasons.add(where + "the hand holds " + in.force(handN) + ", more than the " + in.force(hauler.handLimitN())
                    + " that " + hauler.name() + " holds; move the axle.");
        }
        return reasons;
    }

    private static List<String> impossible(
            Rig rig, CartInHand cart, List<Leg> legs, List<Hauler> haulers, double needed, FigureWriter in) {
        List<String> reasons = new ArrayList<>();
        if (!cart.type().fits().contains(rig.boat().kind())) {
            reasons.add("A " + cart.type().label() + " does not hold a "
                    + rig.boat().kind().label() + ".");
        }
        cart.countedRatingKg()
                .filter(rated -> rated < needed)
                .ifPresent(rated -> reasons.add("The cart needs a rating of " + in.mass(needed)
                        + " over this way, and only " + in.mass(rated) + " can be counted on."));
        double strongest =
                haulers.stream().mapToDouble(Hauler::pullLimitN).max().orElse(0);
        Hauler team = new Hauler("two people", strongest * TWO_PEOPLE, Hauler.USUAL_HAND_N * 2, false);
        for (Leg leg : legs) {
            switch (leg) {
                case Leg.Carried carried -> {
                    if (carried.eachKg() > CARRIED_EACH_KG) {
                        reasons.add(carried.ground().name() + ": it has to be carried, and " + in.mass(carried.eachKg())
                                + " for each of two is too much.");
                    }
                }
                case Leg.Rolled rolled -> impossibleRoll(rolled, team, in).ifPresent(reasons::add);
            }
        }
        return reasons;
    }

    private static Optional<String> impossibleRoll(Leg.Rolled leg, Hauler team, FigureWriter in) {
        String where = leg.ground().name() + ": ";
        if (leg.up().wheelsLift() || leg.down().wheelsLift()) {
            return Optional.of(where + "with the axle there the wheels would not stay on the ground; move it forward.");
        }
        if (team.ratio(leg.pullN().likely(), leg.ground().distanceM()) > 1) {
            return Optional.of(
                    where + "a steady pull of " + in.force(leg.pullN().likely()) + " over "
                            + in.way(leg.ground().distanceM()) + " is too much even for two people.");
        }
        return Optional.empty();
    }

    private static List<String> cautions(Rig rig, CartInHand cart, List<Leg> legs, double needed, FigureWriter in) {
        List<String> cautions = new ArrayList<>();
        if (cart.countedRatingKg().isEmpty()) {
            cautions.add("Nobody gave the cart's rating; over this way it has to be at least " + in.mass(needed)
                    + ". Read its label.");
        }
        if (cart.type().loadsDrainHoles(rig.boat().kind())) {
            cautions.add(cart.type().harm());
        }
        legs.stream()
                .map(Leg::ground)
                .filter(each -> each.rolled()
                        && cart.type().avoid().contains(each.surface().code()))
                .forEach(each -> cautions.add(each.name() + ": a " + cart.type().label() + " should not go over "
                        + each.surface().label() + "."));
        cautions.addAll(CartAnswer.cautions(in));
        return cautions;
    }

    private static Stream<Leg.Rolled> rolled(List<Leg> legs) {
        return legs.stream().filter(Leg.Rolled.class::isInstance).map(Leg.Rolled.class::cast);
    }
}
