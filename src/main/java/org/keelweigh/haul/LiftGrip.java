package org.keelweigh.haul;

/** How well the hands hold the load, by the revised lifting equation's three classes. */
public enum LiftGrip {
    GOOD(1, 1),
    FAIR(0.95, 1),
    POOR(0.9, 0.9);

    private final double low;
    private final double high;

    LiftGrip(double low, double high) {
        this.low = low;
        this.high = high;
    }

    /** Tells the multiplier for hands below, or at and above, 75 cm (30 in). */
    double multiplier(boolean handsHigh) {
        return handsHigh ? high : low;
    }
}
