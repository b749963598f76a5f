package org.keelweigh.condition;

/**
 * How likely each outcome of a check is.
 *
 * @param id the check's id
 * @param before its chances when nothing was observed, after scaling for age and use
 * @param now its chances after the evidence
 */
public record CheckBelief(String id, OutcomeChances before, OutcomeChances now) {

    /**
     * Tells how many times as likely a major fault or worse is now as before.
     *
     * @return 1 when there was no chance of one before
     */
    public double timesAsLikely() {
        return before.majorOrWorse() > 0 ? now.majorOrWorse() / before.majorOrWorse() : 1;
    }
}
