package org.keelweigh.exchange;

import java.util.List;
import java.util.UUID;
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

    /** The version that is written; every version up to this one can be read. */
    public static final int VERSION = 1;

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
     */
    public record CandidatePart(UUID id, CandidateData data) {}

    /** Makes the document of what is stored. */
    public static ShortlistDocument of(Facts facts) {
        return new ShortlistDocument(
                FORMAT,
                VERSION,
                new ShortlistPart(
                        facts.shortlist().id().value(), facts.shortlist().data()),
                facts.people().stream()
                        .map(person -> new PersonPart(person.id().value(), person.data()))
                        .toList(),
                facts.candidates().stream()
                        .map(boat -> new CandidatePart(boat.id().value(), boat.data()))
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
