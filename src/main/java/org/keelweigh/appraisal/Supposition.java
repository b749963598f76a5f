package org.keelweigh.appraisal;

import java.util.List;
import java.util.UUID;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.FieldPath;
import org.keelweigh.shortlist.Person;
import org.keelweigh.shortlist.PersonData;
import org.keelweigh.shortlist.PersonId;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistData;

/** Tells the facts as if somebody had typed one more field. */
final class Supposition {

    private static final PersonId SOMEBODY = new PersonId(new UUID(0, 0));

    private Supposition() {}

    /** Supposes a field of one boat. */
    static Facts boat(Facts facts, CandidateId id, String field, Object value) {
        List<Candidate> boats = facts.candidates().stream()
                .map(each -> each.id().equals(id) ? with(each, field, value) : each)
                .toList();
        return new Facts(facts.shortlist(), facts.people(), boats);
    }

    private static Candidate with(Candidate boat, String field, Object value) {
        CandidateData data = new FieldPath(field).with(boat.data(), value);
        return new Candidate(boat.id(), boat.shortlist(), boat.version(), data);
    }

    /** Supposes a field of the shortlist, such as {@code trip.mainWater}. */
    static Facts shortlist(Facts facts, String field, Object value) {
        Shortlist old = facts.shortlist();
        ShortlistData data = new FieldPath(field).with(old.data(), value);
        return new Facts(new Shortlist(old.id(), old.version(), data), facts.people(), facts.candidates());
    }

    /** Supposes a field of one person, who joins the list if nobody is on it. */
    static Facts person(Facts facts, Participant person, String field, Object value) {
        PersonData changed = new FieldPath(field).with(person.data(), value);
        PersonId id = person.id().orElse(SOMEBODY);
        List<Person> people = facts.people().isEmpty()
                ? List.of(new Person(id, facts.shortlist().id(), 0, changed))
                : facts.people().stream()
                        .map(each ->
                                each.id().equals(id) ? new Person(id, each.shortlist(), each.version(), changed) : each)
                        .toList();
        return new Facts(facts.shortlist(), people, facts.candidates());
    }
}
