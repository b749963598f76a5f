package org.keelweigh.fit;

/**
 * Friction of a hull by the ITTC-1957 line, {@code C_F = 0.075/(log₁₀ Re − 2)²}, {@code Re = V L/ν}.
 *
 * <p>Source: J. B. Hadler, David Taylor Model Basin Report 1185, 1958; E. C. Tupper, <i>Introduction to Naval
 * Architecture</i>, Table 8.3.
 */
public final class FrictionLine {

    /** Kinematic viscosity of fresh water at 15 °C, m²/s (A. Morrall, NPL Ship Report 142, 1970). */
    public static final double FRESH_VISCOSITY_M2_PER_S = 1.13902e-6;
    /** Density of fresh water at 15 °C, kg/m³. */
    public static final double FRESH_KG_PER_M3 = 999.1026;

    private static final double LEAST_REYNOLDS = 1e4;

    private FrictionLine() {}

    /**
     * Computes the friction coefficient.
     *
     * @param reynolds Reynolds number, 10⁴ or more
     */
    public static double coefficient(double reynolds) {
        if (!(reynolds >= LEAST_REYNOLDS)) {
            throw new IllegalArgumentException(
                    "The friction line holds from a Reynolds number of " + LEAST_REYNOLDS + ", not for " + reynolds);
        }
        double decades = Math.log10(reynolds) - 2;
        return 0.075 / (decades * decades);
    }

    /** Computes the Reynolds number {@code V L/ν} in metres, seconds. */
    public static double reynolds(double speedMPerS, double lengthM, double viscosityM2PerS) {
        return speedMPerS * lengthM / viscosityM2PerS;
    }

    /**
     * Computes the frictional drag {@code ρ V² S C_F/2} in fresh water, newtons.
     *
     * @param speedMPerS speed, metres per second
     * @param waterlineM length on the water, metres
     * @param wettedM2 wetted surface, square metres
     */
    public static double dragN(double speedMPerS, double waterlineM, double wettedM2) {
        double cf = coefficient(reynolds(speedMPerS, waterlineM, FRESH_VISCOSITY_M2_PER_S));
        return FRESH_KG_PER_M3 * speedMPerS * speedMPerS * wettedM2 * cf / 2;
    }
}
