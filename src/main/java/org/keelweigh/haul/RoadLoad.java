package org.keelweigh.haul;

import org.keelweigh.quantity.Mass;

/** What wind and braking do to a load on the road. */
public final class RoadLoad {

    /** Density of air at 15 °C and sea level, kg/m³. */
    private static final double AIR_KG_PER_M3 = 1.225;
    /** Deceleration that tie-downs have to hold, in g0 (49 CFR 393.102, commercial loads). */
    private static final double BRAKING_G = 0.8;

    private RoadLoad() {}

    /** Tells the dynamic pressure {@code ρ v²/2}, pascals, at {@code speedMPerS} metres per second. */
    public static double dynamicPressurePa(double speedMPerS) {
        return AIR_KG_PER_M3 * speedMPerS * speedMPerS / 2;
    }

    /** Tells the forward force {@code 0.8 m g0}, newtons, that lines and straps hold in hard braking. */
    public static double brakingN(double massKg) {
        return BRAKING_G * massKg * Mass.STANDARD_GRAVITY;
    }
}
