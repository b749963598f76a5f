package org.keelweigh.listing;

/** How plainly the words say it. A judgement by rule, not a probability. */
public enum Certainty {
    /** The words name the fact. */
    PLAIN,
    /** The usual meaning of such words. */
    LIKELY,
    /** A guess worth a look. */
    UNSURE
}
