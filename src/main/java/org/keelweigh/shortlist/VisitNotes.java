package org.keelweigh.shortlist;

import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What people wrote down about a visit besides the findings; {@code null} means nobody said.
 *
 * @param startedAt when the walk around the boat began
 * @param minutes the minutes they gave themselves
 * @param place where the boat was seen
 * @param present who was there
 * @param seller the seller's name
 * @param buyer the buyer's name
 * @param included what goes with the boat, in their own words
 * @param agreedPrice what was agreed, in the shortlist's currency
 * @param skipped checks put off, by their ids
 * @param answers the seller's answers: question id to words
 */
public record VisitNotes(
        @Nullable Instant startedAt,
        @Nullable Integer minutes,
        @Nullable String place,
        @Nullable String present,
        @Nullable String seller,
        @Nullable String buyer,
        @Nullable String included,
        @Nullable Double agreedPrice,
        List<String> skipped,
        SortedMap<String, String> answers) {

    public VisitNotes {
        skipped = List.copyOf(skipped);
        answers = Collections.unmodifiableSortedMap(new TreeMap<>(answers));
    }

    /** Makes notes in which nothing is written. */
    public static VisitNotes none() {
        return new VisitNotes(null, null, null, null, null, null, null, null, List.of(), new TreeMap<>());
    }

    /** Tells the same begun at a moment with minutes to go. */
    public VisitNotes begun(Instant at, int forMinutes) {
        return new VisitNotes(at, forMinutes, place, present, seller, buyer, included, agreedPrice, skipped, answers);
    }

    /** Tells the same with other minutes to go. */
    public VisitNotes forMinutes(int forMinutes) {
        return new VisitNotes(
                startedAt, forMinutes, place, present, seller, buyer, included, agreedPrice, skipped, answers);
    }

    /** Tells the same with other checks put off. */
    public VisitNotes withSkipped(List<String> checks) {
        return new VisitNotes(
                startedAt, minutes, place, present, seller, buyer, included, agreedPrice, checks, answers);
    }

    /** Tells the same with other words about place and people. */
    public VisitNotes withPeople(
            @Nullable String where, @Nullable String who, @Nullable String selling, @Nullable String buying) {
        return new VisitNotes(startedAt, minutes, where, who, selling, buying, included, agreedPrice, skipped, answers);
    }

    /** Tells the same with other terms of the sale. */
    public VisitNotes withTerms(@Nullable String with, @Nullable Double price) {
        return new VisitNotes(startedAt, minutes, place, present, seller, buyer, with, price, skipped, answers);
    }

    /** Tells the same with an answer of the seller, or without one when it is blank. */
    public VisitNotes withAnswer(String question, String answer) {
        SortedMap<String, String> others = new TreeMap<>(answers);
        if (answer.isBlank()) {
            others.remove(question);
        } else {
            others.put(question, answer.strip());
        }
        return new VisitNotes(
                startedAt, minutes, place, present, seller, buyer, included, agreedPrice, skipped, others);
    }
}
