package org.keelweigh.condition;

import org.keelweigh.boat.Coded;

/** What a check can come out as, from best to worst, and the answer that the part is not there at all. */
public enum Outcome implements Coded {
    /** As it should be. */
    FINE("fine", "fine"),
    /** Live with it or put it right cheaply. */
    MINOR("minor", "minor"),
    /** Put it right or reprice. */
    MAJOR("major", "major"),
    /** Do not buy, or value that part at nothing; the grade says which. */
    STOP("stop", "stop"),
    /** The part that the check is about is not fitted to this boat. */
    NOT_FITTED("not-fitted", "not fitted");

    private final String code;
    private final String label;

    Outcome(String code, String label) {
        this.code = code;
        this.label = label;
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells the name in plain words. */
    public String label() {
        return label;
    }
}
