package org.keelweigh.appraisal;

import org.keelweigh.condition.Check;

/**
 * What one more check is expected to bring before anybody has made it.
 *
 * @param boat the place of the boat
 * @param check the check
 * @param gain expected gain of knowing its report before choosing, in the shortlist's money
 * @param gainError standard error of the gain
 * @param changeChance chance that the report changes the choice
 * @param minutes how long it takes
 */
public record CheckOutlook(int boat, Check check, double gain, double gainError, double changeChance, double minutes) {

    /** Tells the expected gain for each minute of checking. */
    public double gainPerMinute() {
        return gain / Math.max(1, minutes);
    }

    /** Says why the check is worth making, as the end of a sentence about it. */
    public String reason() {
        return "would change the choice in " + Confidence.inWords(changeChance) + " cases";
    }
}
