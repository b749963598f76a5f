package org.keelweigh.haul;

/**
 * The forces between boat, wheels and hauler at steady speed.
 *
 * @param wheelN what both wheels carry together, normal to the ground, newtons; below 0 the wheels would lift off
 * @param handN what the hand lifts, normal to the ground, newtons; below 0 the hand has to press the bow down
 * @param pullN what the hand pulls along the ground towards the top of the slope, newtons; on the way down it is what
 *     must be held back, and below 0 the hauler has to pull the boat down
 */
public record CartForces(double wheelN, double handN, double pullN) {

    /** Tells the size of the force in the hand, {@code √(F² + P²)}, newtons. */
    public double magnitudeN() {
        return Math.hypot(handN, pullN);
    }

    /** Tells what one of {@code wheels} carries when the load is centred, newtons. */
    public double perWheelN(int wheels) {
        if (wheels < 1) {
            throw new IllegalArgumentException("A cart has at least 1 wheel, not " + wheels);
        }
        return wheelN / wheels;
    }

    /** Tells whether the hand has to press the bow down because the load lies behind the axle. */
    public boolean pressesDown() {
        return handN < 0;
    }

    /** Tells whether the wheels leave the ground: no such way of rolling exists. */
    public boolean wheelsLift() {
        return wheelN <= 0;
    }
}
