package org.keelweigh.haul;

/** Which way the boat is rolled over a slope; the bow, in the hauler's hands, is always the end that is uphill. */
public enum Heading {
    /** Up the slope, bow first: rolling resistance adds to what the hauler pulls. */
    UPHILL(1),
    /** Down the slope, backed down stern first with the hauler above it: rolling resistance helps to hold the boat back. */
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
