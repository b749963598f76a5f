package org.keelweigh.decision;

/** Tells which way a measure gets better; the value function has to agree with it. */
public enum Direction {
    /** More of the measure is never worse. */
    MORE_IS_BETTER,
    /** Less of the measure is never worse. */
    LESS_IS_BETTER,
    /** A middle is best, and both too little and too much are worse. */
    MIDDLE_IS_BEST
}
