package org.keelweigh.condition;

import org.jspecify.annotations.Nullable;
import org.keelweigh.quantity.Estimate;

/**
 * What came out of one check on one boat. A check without a finding has not been made, which is not the same as fine.
 *
 * @param check the check's id in the inspection catalogue
 * @param outcome what came out
 * @param method how it is known
 * @param measured what was measured, in the unit the check names
 * @param note a person's own words
 * @param quote a repairer's written estimate, in the shortlist's currency; it replaces the catalogue's
 */
public record Finding(
        String check,
        Outcome outcome,
        Method method,
        @Nullable Double measured,
        @Nullable String note,
        @Nullable Estimate quote) {

    /** Makes a finding that was touched and measured, with nothing else said. */
    public static Finding of(String check, Outcome outcome) {
        return new Finding(check, outcome, Method.TOUCHED, null, null, null);
    }

    /** Makes the same finding with its quote in another currency: {@code factor} units of that one for each unit of its own. */
    public Finding withQuoteTimes(double factor) {
        return quote == null ? this : new Finding(check, outcome, method, measured, note, quote.times(factor));
    }
}
