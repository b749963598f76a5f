package org.keelweigh.haul;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.PlacedMass;
import org.keelweigh.quantity.Estimate;
import org.keelweigh.quantity.Mass;

/** A boat as it stands on one kind of cart: where it balances, where it is held, where the axle should go. */
record Rig(Boat boat, RigidLoad load, CartType cart) {

    /** Where the bow handle sits, as share of the length from the stern: estimate. */
    private static final double GRIP_SHARE = 0.94;
    /** The comfortable hand load, newtons (common practice, no source). */
    private static final double LEAST_HAND_N = 30;

    private static final double MOST_HAND_N = 120;
    /** For light boats the comfortable band shrinks with the weight, else the hand would carry most of the boat. */
    private static final double LEAST_HAND_SHARE = 0.1;

    private static final double MOST_HAND_SHARE = 0.4;
    /**
     * How far back from the foremost comfortable place the axle is set, as share of the comfortable stretch: estimate.
     */
    private static final double LIGHT_SHARE = 0.25;
    /** Where under the hull a cart can stand, as share of the length from the stern: estimate. */
    private static final double REARMOST_SHARE = 0.15;

    private static final double FOREMOST_SHARE = 0.75;
    /** A kerb shakes the load as hard as so many times its weight: estimate. */
    private static final double KERB_BUMP = 2.5;
    /** Share of its rating up to which a cart is loaded (common practice, no source). */
    private static final double USED_SHARE_OF_RATING = 0.8;

    static Rig of(CartRequest request, CartType cart) {
        Boat boat = request.boat();
        List<PlacedMass> masses = new ArrayList<>(boat.strippedMasses());
        if (request.rigged()) {
            masses.addAll(boat.removableMasses());
        }
        if (request.gearKg() > 0) {
            double seatM = boat.seats().stream()
                    .mapToDouble(seat -> seat.stationM().value())
                    .average()
                    .orElseThrow();
            masses.add(new PlacedMass(
                    "gear", request.gearKg(), seatM, boat.depthM().value() / 2));
        }
        return new Rig(boat, new RigidLoad(masses), cart);
    }

    double gripStationM() {
        return boat.lengthM().value() * GRIP_SHARE;
    }

    double gripHeightM() {
        return boat.depthM().value();
    }

    CartStatics withAxleAt(double stationM) {
        return new CartStatics(
                load.weightN(),
                load.stationM() - stationM,
                cart.bedAboveAxleM() + load.heightM(),
                gripStationM() - stationM,
                cart.bedAboveAxleM() + gripHeightM());
    }

    AxleAdvice advise(List<Ground> rolled) {
        double balance = load.stationM();
        CartStatics there = withAxleAt(balance);
        double foremost = Double.POSITIVE_INFINITY;
        double rearmost = Double.NEGATIVE_INFINITY;
        for (Ground ground : rolled) {
            double rolling = rollingOn(ground).likely();
            for (Heading heading : Heading.values()) {
                DoubleUnaryOperator axle =
                        handN -> balance + there.axleShiftM(handN, rolling, ground.slopeRad(), heading);
                foremost = Math.min(foremost, axle.applyAsDouble(leastHandN()));
                rearmost = Math.max(rearmost, axle.applyAsDouble(mostHandN()));
            }
        }
        double between = rolled.isEmpty() ? balance : between(foremost, rearmost);
        double station = cart.fixedAxleShare()
                .map(share -> share * boat.lengthM().value())
                .orElse(clamp(between));
        return adviceAt(station, foremost, rearmost, rolled);
    }

    /** Prefers a light hand with room for error; where no place is comfortable everywhere, the middle errs least. */
    private static double between(double foremostM, double rearmostM) {
        return foremostM >= rearmostM ? foremostM - LIGHT_SHARE * (foremostM - rearmostM) : (foremostM + rearmostM) / 2;
    }

    private AxleAdvice adviceAt(double station, double foremost, double rearmost, List<Ground> rolled) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Ground ground : rolled) {
            for (Heading heading : Heading.values()) {
                double handN = withAxleAt(station)
                        .forces(rollingOn(ground).likely(), ground.slopeRad(), heading)
                        .handN();
                least = Math.min(least, handN);
                most = Math.max(most, handN);
            }
        }
        if (rolled.isEmpty()) {
            return new AxleAdvice(station, station, station, true, 0, 0);
        }
        boolean comfortable = least >= leastHandN() - 1e-6 && most <= mostHandN() + 1e-6;
        return new AxleAdvice(station, foremost, rearmost, comfortable, least, most);
    }

    Leg.Rolled roll(Ground ground, double axleStationM) {
        CartStatics statics = withAxleAt(axleStationM);
        Estimate rolling = rollingOn(ground);
        CartForces up = statics.forces(rolling.likely(), ground.slopeRad(), Heading.UPHILL);
        CartForces down = statics.forces(rolling.likely(), ground.slopeRad(), Heading.DOWNHILL);
        double level = statics.forces(0, 0, Heading.UPHILL).wheelN();
        double most = Math.max(level, Math.max(up.wheelN(), down.wheelN()));
        double kerbN = ground.stepHeightM() > 0
                ? KerbStep.pullN(Math.max(0, level), cart.wheelRadiusM(), ground.stepHeightM())
                : 0;
        double bump = Math.max(ground.surface().bumpFactor(), ground.stepHeightM() > 0 ? KERB_BUMP : 1);
        return new Leg.Rolled(
                ground,
                up,
                down,
                pullUp(statics, rolling, ground),
                up.pullN() * ground.surface().startFactor(),
                Math.max(0, down.pullN()),
                kerbN,
                level / cart.wheels(),
                neededRatingKg(most, bump));
    }

    private static Estimate pullUp(CartStatics statics, Estimate rolling, Ground ground) {
        double[] pulls = DoubleStream.of(rolling.low(), rolling.likely(), rolling.high())
                .map(c -> statics.forces(c, ground.slopeRad(), Heading.UPHILL).pullN())
                .sorted() // more drag means more pull, unless the wheels are about to leave the ground
                .toArray();
        return new Estimate(pulls[0], pulls[1], pulls[2]);
    }

    /** Tells {@code C/g0 × bump / 0.8}, kilograms. */
    static double neededRatingKg(double wheelLoadN, double bumpFactor) {
        return Math.max(0, wheelLoadN) / Mass.STANDARD_GRAVITY * bumpFactor / USED_SHARE_OF_RATING;
    }

    private Estimate rollingOn(Ground ground) {
        Optional<Estimate> rolling = ground.surface().rollingOn(cart.tyre());
        return rolling.orElseThrow(() -> new IllegalArgumentException(
                "A boat is carried and not rolled over " + ground.surface().label()));
    }

    private double leastHandN() {
        return Math.min(LEAST_HAND_N, LEAST_HAND_SHARE * load.weightN());
    }

    private double mostHandN() {
        return Math.min(MOST_HAND_N, MOST_HAND_SHARE * load.weightN());
    }

    private double clamp(double stationM) {
        double lengthM = boat.lengthM().value();
        return Math.clamp(stationM, REARMOST_SHARE * lengthM, FOREMOST_SHARE * lengthM);
    }
}
