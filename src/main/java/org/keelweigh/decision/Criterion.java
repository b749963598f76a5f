package org.keelweigh.decision;

import java.util.Set;

/**
 * One thing that matters in the choice, with the scale on which it is valued.
 *
 * @param id stable and unique in its set
 * @param name shown to people
 * @param family branch of the hierarchy it belongs to
 * @param unit of the measure, empty for a plain number
 * @param direction which way the measure gets better
 * @param valueFunction from measure to 0..100, on a fixed range
 * @param countedParts names of the parts this criterion adds up (the positions of a bill, for instance); no two
 *     criteria of a set may share one, because that part would then count twice
 */
public record Criterion(
        String id,
        String name,
        String family,
        String unit,
        Direction direction,
        ValueFunction valueFunction,
        Set<String> countedParts) {

    /** Refuses blank names and a value function that contradicts the direction. */
    public Criterion {
        requireText("id", id);
        requireText("name", name);
        requireText("family", family);
        countedParts = Set.copyOf(countedParts);
        if (!valueFunction.agreesWith(direction)) {
            throw new IllegalArgumentException("The value function of criterion '" + id + "' contradicts its direction "
                    + direction + ": " + valueFunction);
        }
    }

    /** A criterion that adds up no named parts. */
    public Criterion(
            String id, String name, String family, String unit, Direction direction, ValueFunction valueFunction) {
        this(id, name, family, unit, direction, valueFunction, Set.of());
    }

    private static void requireText(String what, String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException("The " + what + " of a criterion must not be blank");
        }
    }
}
