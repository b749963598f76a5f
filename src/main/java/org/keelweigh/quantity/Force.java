package org.keelweigh.quantity;

/**
 * A force.
 *
 * @param newtons newtons; any finite number
 */
public record Force(double newtons) implements Comparable<Force> {

    /** Newtons in one pound-force, exact (NIST SP 811, 2008, App. B: 0.45359237 kg × 9.80665 m/s²). */
    public static final double N_PER_POUND_FORCE = 4.4482216152605;

    public Force {
        Finite.require("force", newtons, "N");
    }

    /** Makes a force of {@code poundsForce} pounds-force. */
    public static Force ofPoundsForce(double poundsForce) {
        return new Force(poundsForce * N_PER_POUND_FORCE);
    }

    /** Tells this force in pounds-force. */
    public double poundsForce() {
        return newtons / N_PER_POUND_FORCE;
    }

    /** Tells the mass whose weight this force is, in kilograms: what a bathroom scale would show. */
    public double kgHeld() {
        return newtons / Mass.STANDARD_GRAVITY;
    }

    @Override
    public int compareTo(Force other) {
        return Double.compare(newtons, other.newtons);
    }
}
