package org.keelweigh.listing;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One fact proposed from a listing, for a person to accept or not.
 *
 * @param fact what it is about
 * @param value the value proposed
 * @param start where the words begin in the text, counted from 0
 * @param end where they end, exclusive
 * @param words the words themselves
 * @param note what is ambiguous about them, in plain words; empty if nothing
 * @param certainty how plainly the words say it
 */
public record Proposal(Fact fact, Value value, int start, int end, String words, String note, Certainty certainty) {

    /** A number in the unit of the fact, or a word. */
    public sealed interface Value {}

    /**
     * A quantity.
     *
     * @param amount in the unit that the fact names
     */
    public record Quantity(double amount) implements Value {}

    /**
     * A code, a name or a number made of characters.
     *
     * @param text never blank
     */
    public record Text(String text) implements Value {}

    /** The number, if the value is one. */
    public OptionalDouble amount() {
        return value instanceof Quantity(double amount) ? OptionalDouble.of(amount) : OptionalDouble.empty();
    }

    /** The word, if the value is one. */
    public Optional<String> text() {
        return value instanceof Text(String text) ? Optional.of(text) : Optional.empty();
    }
}
