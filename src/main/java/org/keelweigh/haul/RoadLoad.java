package org.keelweigh.haul;

import org.keelweigh.quantity.Mass;

/** What braking does to a load on the road. */
public final class RoadLoad {

    /** Deceleration that tie-downs have to hold, in g0 (49 CFR 393.102, commercial loads). */
    private static final double BRAKING_G = 0.8;

    private RoadLoad() {}

    /** Tells the forward force {@code 0.8 m g0}, newtons, that lines and straps hold in hard braking. */
    public static double brakingN(double massKg) {
        return BRAKING_G * massKg * Mass.STANDARD_GRAVITY;
    }
}
