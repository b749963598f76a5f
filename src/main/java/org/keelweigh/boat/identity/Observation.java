package org.keelweigh.boat.identity;

/**
 * Something worth telling about a number whose format fits.
 *
 * @param weight how much it matters
 * @param sentence the observation in plain words
 */
public record Observation(Weight weight, String sentence) {

    /** Ranks observations. */
    public enum Weight {
        /** Good to know; nothing is wrong. */
        NOTE,
        /** Out of the ordinary; ask. */
        UNUSUAL,
        /** Cannot be true of a real boat today; the number was misread or is wrong. */
        IMPOSSIBLE
    }
}
