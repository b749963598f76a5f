package org.keelweigh.shortlist;

import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What people wrote down about a visit besides the findings, and where they are on their way round the boat; {@code null}
 * means nobody said.
 *
 * @param startedAt when the walk around the boat began
 * @param minutes the minutes they gave themselves
 * @param place where the boat was seen
 * @param present who was there
 * @param seller the seller's name
 * @param buyer the buyer's name
 * @param included what goes with the boat, in their own words
 * @param agreedPrice what was agreed, in the shortlist's currency
 * @param answers the seller's answers: question id to words
 * @param order in which order the checks are made
 * @param at the check that is open, by its id
 * @param skipped checks put off, by their ids
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
        SortedMap<String, String> answers,
        @Nullable VisitOrder order,
        @Nullable String at,
        List<String> skipped) {

    public VisitNotes {
        skipped = List.copyOf(skipped);
        answers = Collections.unmodifiableSortedMap(new TreeMap<>(answers));
    }

    /** Makes notes in which nothing is written. */
    public static VisitNotes none() {
        return new VisitNotes(null, null, null, null, null, null, null, null, new TreeMap<>(), null, null, List.of());
    }

    /** Tells the same begun at a moment with minutes to go. */
    public VisitNotes begun(Instant moment, int forMinutes) {
        return new VisitNotes(
                moment, forMinutes, place, present, seller, buyer, included, agreedPrice, answers, order, at, skipped);
    }

    /** Tells the same on another way round the boat. */
    public VisitNotes onTheWay(@Nullable VisitOrder by, @Nullable String open, List<String> putOff) {
        return new VisitNotes(
                startedAt, minutes, place, present, seller, buyer, included, agreedPrice, answers, by, open, putOff);
    }

    /** Tells the same on the way round the boat that other notes tell. */
    VisitNotes onTheWayOf(VisitNotes other) {
        return onTheWay(other.order, other.at, other.skipped);
    }
}
