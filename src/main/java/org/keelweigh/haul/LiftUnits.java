package org.keelweigh.haul;

/**
 * The two forms in which the revised lifting equation is published. They are not exact conversions of each other: the
 * same lift comes out about 2 % apart, so one lift is computed in one of them throughout.
 */
public enum LiftUnits {
    /** Kilograms and centimetres. */
    METRIC(23, 25, 63, 75, 0.003, 175, 4.5, 25, 175),
    /** Pounds and inches. */
    US(51, 10, 25, 30, 0.0075, 70, 1.8, 10, 70);

    final double constantLoad;
    final double nearestH;
    final double farthestH;
    final double kneeV;
    final double slopeV;
    final double highestV;
    final double travelTerm;
    final double leastD;
    final double mostD;

    LiftUnits(
            double constantLoad,
            double nearestH,
            double farthestH,
            double kneeV,
            double slopeV,
            double highestV,
            double travelTerm,
            double leastD,
            double mostD) {
        this.constantLoad = constantLoad;
        this.nearestH = nearestH;
        this.farthestH = farthestH;
        this.kneeV = kneeV;
        this.slopeV = slopeV;
        this.highestV = highestV;
        this.travelTerm = travelTerm;
        this.leastD = leastD;
        this.mostD = mostD;
    }
}
