package org.keelweigh.haul;

/**
 * A loaded boat on a two-wheel cart, held at one end, hull parallel to the ground, rolled bow first at steady speed.
 *
 * <p>With weight {@code W}, slope {@code θ}, rolling coefficient {@code c} (positive up, negative down), the centre of
 * gravity {@code a} ahead of and {@code H} above the axle, and the grip {@code L} ahead of and {@code h} above it:
 *
 * <pre>
 * N + F = W cos θ            normal to the slope
 * P     = W sin θ + c N      along the slope
 * F     = W [a cos θ + c h cos θ + (h − H) sin θ] / (L + c h)
 * </pre>
 *
 * <p>The wheel runs free, so the ground's whole force passes through the axle, about which the moments balance: {@code
 * L F − h P = W (a cos θ − H sin θ)}. Derived here; the tests solve the three equations of equilibrium beside it.
 *
 * @param weightN weight {@code W}, newtons, above 0
 * @param centreAheadM {@code a}, metres; below 0 when the load lies behind the axle
 * @param centreAboveM {@code H}, metres
 * @param gripAheadM {@code L}, metres, above 0
 * @param gripAboveM {@code h}, metres
 */
public record CartStatics(
        double weightN, double centreAheadM, double centreAboveM, double gripAheadM, double gripAboveM) {

    private static final double STEEPEST_RAD = Math.toRadians(60);

    public CartStatics {
        requireAbove0("weight", weightN, "N");
        requireAbove0("distance from axle to grip", gripAheadM, "m");
        requireFinite("distance from axle to centre of gravity", centreAheadM, "m");
        requireFinite("height of the centre of gravity above the axle", centreAboveM, "m");
        requireFinite("height of the grip above the axle", gripAboveM, "m");
    }

    /**
     * Computes the forces.
     *
     * @param rolling rolling coefficient, 0 or more
     * @param slopeRad slope, radians, from 0 to 60°
     * @param heading up or down that slope
     * @throws IllegalArgumentException if an input is out of bounds, or the grip is so high and the drag so great that
     *     {@code L + c h} is not above 0 and no steady rolling exists
     */
    public CartForces forces(double rolling, double slopeRad, Heading heading) {
        double drag = heading.sign() * requireRolling(rolling);
        requireSlope(slopeRad);
        double arm = gripAheadM + drag * gripAboveM;
        requireAbove0("lever arm of the hand with drag", arm, "m");
        double handN = weightN * leverage(centreAheadM, drag, slopeRad) / arm;
        double wheelN = weightN * Math.cos(slopeRad) - handN;
        return new CartForces(wheelN, handN, weightN * Math.sin(slopeRad) + drag * wheelN);
    }

    /**
     * Tells how far to move the axle forward so that the hand lifts {@code handN}; negative is towards the stern.
     *
     * <p>{@code F} is a ratio of two straight lines in the axle's place, so that {@code s = W [leverage] − F (L + c h)}
     * over {@code W cos θ − F} solves it exactly. The height of the boat on its cart stays as it is.
     *
     * @param handN wanted hand load normal to the ground, newtons, below {@code W cos θ}
     * @return metres; the axle that results may lie anywhere, even off the hull
     * @throws IllegalArgumentException if the hand would carry the whole boat, or an input is out of bounds
     */
    public double axleShiftM(double handN, double rolling, double slopeRad, Heading heading) {
        double drag = heading.sign() * requireRolling(rolling);
        requireSlope(slopeRad);
        double rest = weightN * Math.cos(slopeRad) - handN;
        requireAbove0("load left for the wheels", rest, "N");
        double arm = gripAheadM + drag * gripAboveM;
        return (weightN * leverage(centreAheadM, drag, slopeRad) - handN * arm) / rest;
    }

    /** Makes the same boat with its axle {@code metres} further forward. */
    public CartStatics withAxleForward(double metres) {
        return new CartStatics(weightN, centreAheadM - metres, centreAboveM, gripAheadM - metres, gripAboveM);
    }

    private double leverage(double ahead, double drag, double slopeRad) {
        return (ahead + drag * gripAboveM) * Math.cos(slopeRad) + (gripAboveM - centreAboveM) * Math.sin(slopeRad);
    }

    private static double requireRolling(double rolling) {
        if (!(rolling >= 0) || Double.isInfinite(rolling)) {
            throw new IllegalArgumentException("The rolling coefficient must be 0 or more, not " + rolling);
        }
        return rolling;
    }

    private static void requireSlope(double slopeRad) {
        if (!(slopeRad >= 0 && slopeRad <= STEEPEST_RAD)) {
            throw new IllegalArgumentException(
                    "The slope must be between 0 and " + STEEPEST_RAD + " rad (60 degrees), not " + slopeRad + " rad");
        }
    }

    private static void requireFinite(String what, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    "The " + what + " must be a finite number of " + unit + ", not " + value);
        }
    }

    private static void requireAbove0(String what, double value, String unit) {
        requireFinite(what, value, unit);
        if (value <= 0) {
            throw new IllegalArgumentException("The " + what + " must be above 0 " + unit + ", not " + value);
        }
    }
}
