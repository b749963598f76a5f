package org.keelweigh.shortlist;

import java.util.List;
import java.util.Optional;

/**
 * Everything people said about one decision: the input of an appraisal.
 *
 * @param shortlist the frame
 * @param people those who paddle, carry or decide, in their order
 * @param candidates the boats, in their order
 */
public record Facts(Shortlist shortlist, List<Person> people, List<Candidate> candidates) {

    public Facts {
        people = List.copyOf(people);
        candidates = List.copyOf(candidates);
    }

    /** Finds a candidate. */
    public Optional<Candidate> candidate(CandidateId id) {
        return candidates.stream().filter(each -> each.id().equals(id)).findFirst();
    }

    /** Finds a person. */
    public Optional<Person> person(PersonId id) {
        return people.stream().filter(each -> each.id().equals(id)).findFirst();
    }

    /** Tells the same with a candidate in place of the one that it was. */
    public Facts with(Candidate changed) {
        return new Facts(
                shortlist,
                people,
                candidates.stream()
                        .map(each -> each.id().equals(changed.id()) ? changed : each)
                        .toList());
    }
}
