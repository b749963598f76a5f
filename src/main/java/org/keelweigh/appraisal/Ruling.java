package org.keelweigh.appraisal;

import java.util.Optional;

/**
 * A hard rule that a boat breaks.
 *
 * @param rule the rule
 * @param reason how it breaks it, as a sentence with its figures
 * @param remedy what would lift the ruling, as a sentence
 * @param lifted the reason a person wrote for lifting it; empty while it stands
 */
public record Ruling(Rule rule, String reason, String remedy, Optional<String> lifted) {

    /** Tells whether it rules the boat out. */
    public boolean stands() {
        return lifted.isEmpty();
    }
}
