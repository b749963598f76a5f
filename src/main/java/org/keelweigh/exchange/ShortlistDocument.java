package org.keelweigh.exchange;

import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.Person;
import org.keelweigh.shortlist.PersonData;
import org.keelweigh.shortlist.PersonId;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.shortlist.VisitNotes;

/**
 * A whole shortlist as it stands in a file. The form is described in {@code docs/data-format.md} and, for programs, in
 * {@code docs/shortlist.schema.json}.
 *
 * @param format always {@link #FORMAT}
 * @param formatVersion the version of the form, see {@link #VERSION}
 * @param shortlist the frame
 * @param people those who paddle, carry or decide, in their order
 * @param candidates the boats, in their order
 */
public record ShortlistDocument(
        String format,
        int formatVersion,
        ShortlistPart shortlist,
        List<PersonPart> people,
        List<CandidatePart> candidates) {

    /** The name by which a file says what it is. */
    public static final String FORMAT = "keelweigh-shortlist";

    /** The version that is written; every version up to this one can be read. Version 2 added the notes of visits. */
    public static final int VERSION = 2;

    public ShortlistDocument {
        people = List.copyOf(people);
        candidates = List.copyOf(candidates);
    }

    /**
     * The frame with its identifier.
     *
     * @param id which shortlist
     * @param data what people typed
     */
    public record ShortlistPart(UUID id, ShortlistData data) {}

    /**
     * A person with their identifier.
     *
     * @param id which person; {@code liking} of the candidates refers to it
     * @param data what people typed
     */
    public record PersonPart(UUID id, PersonData data) {}

    /**
     * A candidate with its identifier.
     *
     * @param id which candidate
     * @param data what people typed
     * @param visit what they wrote down about a visit to it
     */
    public record CandidatePart(UUID id, CandidateData data, VisitNotes visit) {}

    /**
     * Makes the document of what is stored.
     *
     * @param visits tells the notes of the visit to a boat
     */
    public static ShortlistDocument of(Facts facts, Function<CandidateId, VisitNotes> visits) {
        return new ShortlistDocument(
                FORMAT,
                VERSION,
                new ShortlistPart(
                        facts.shortlist().id().value(), facts.shortlist().data()),
                facts.people().stream()
                        .map(person -> new PersonPart(person.id().value(), person.data()))
                        .toList(),
                facts.candidates().stream()
                        .map(boat -> new CandidatePart(boat.id().value(), boat.data(), visits.apply(boat.id())))
                        .toList());
    }

    /** Makes the facts of an appraisal, as if the document had just been stored. */
    public Facts facts() {
        ShortlistId id = new ShortlistId(shortlist.id());
        return new Facts(
                new Shortlist(id, 0, shortlist.data()),
                people.stream()
                        .map(part -> new Person(new PersonId(part.id()), id, 0, part.data()))
                        .toList(),
                candidates.stream()
                        .map(part -> new Candidate(new CandidateId(part.id()), id, 0, part.data()))
                        .toList());
    }
}
