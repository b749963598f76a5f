package org.keelweigh.haul;

/** The pull that drags a wheel over a kerb. */
public final class KerbStep {

    private KerbStep() {}

    /**
     * Computes the level pull that lifts a wheel over a step: {@code F = C √(2 r s − s²) / (r − s)}, by moments about
     * the step's edge.
     *
     * @param wheelLoadN what all wheels carry, {@code C}, newtons, 0 or more
     * @param wheelRadiusM wheel radius {@code r}, metres
     * @param stepM height of the step {@code s}, metres, from 0; infinite force from {@code s = r} on
     */
    public static double pullN(double wheelLoadN, double wheelRadiusM, double stepM) {
        if (!(wheelLoadN >= 0) || !(wheelRadiusM > 0) || !(stepM >= 0)) {
            throw new IllegalArgumentException("Load (N), wheel radius (m) and step (m) must not be negative, but are "
                    + wheelLoadN + ", " + wheelRadiusM + ", " + stepM);
        }
        return stepM >= wheelRadiusM
                ? Double.POSITIVE_INFINITY
                : wheelLoadN * Math.sqrt(2 * wheelRadiusM * stepM - stepM * stepM) / (wheelRadiusM - stepM);
    }
}
