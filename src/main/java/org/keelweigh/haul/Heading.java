package org.keelweigh.haul;

/** Which way the boat is rolled, bow first, over a slope. */
public enum Heading {
    /** Up the slope: rolling resistance adds to what the hauler pulls. */
    UPHILL(1),
    /** Down the slope: rolling resistance helps to hold the boat back. */
    DOWNHILL(-1);

    private final int sign;

    Heading(int sign) {
        this.sign = sign;
    }

    /** Tells the sign with which rolling resistance enters the pull: +1 up, −1 down. */
    int sign() {
        return sign;
    }
}
