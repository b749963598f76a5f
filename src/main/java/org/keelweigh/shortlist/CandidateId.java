package org.keelweigh.shortlist;

import java.util.UUID;

/**
 * Tells one candidate from all others.
 *
 * @param value the identifier
 */
public record CandidateId(UUID value) {

    /** Makes an identifier nobody has used. */
    public static CandidateId fresh() {
        return new CandidateId(UUID.randomUUID());
    }

    @Override
    public String toString() {
        return value.toString();
    }
}
