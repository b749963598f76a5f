package org.keelweigh.exchange;

import java.util.HashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.PersonId;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.shortlist.VisitBook;
import org.keelweigh.shortlist.VisitNotes;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Puts a document that was read into the store: all of it or nothing. */
@Service
@Transactional
public class ImportService {

    private final ShortlistEditing editing;
    private final VisitBook book;

    ImportService(ShortlistEditing editing, VisitBook book) {
        this.editing = editing;
        this.book = book;
    }

    /** Stores a document, under its own identifiers where nobody has used them and under fresh ones elsewhere. */
    public ShortlistId importInto(ShortlistDocument document, String who) {
        return store(document, false, who);
    }

    /** Stores a document as a copy, under fresh identifiers throughout. */
    public ShortlistId copyInto(ShortlistDocument document, String who) {
        return store(document, true, who);
    }

    private ShortlistId store(ShortlistDocument document, boolean copy, String who) {
        ShortlistId shortlist = new ShortlistId(free(document.shortlist().id(), copy));
        editing.createAs(shortlist, document.shortlist().data(), who);
        Map<String, String> people = new HashMap<>();
        for (ShortlistDocument.PersonPart person : document.people()) {
            UUID id = free(person.id(), copy);
            people.put(person.id().toString(), id.toString());
            editing.addAs(new PersonId(id), shortlist, person.data(), who);
        }
        for (ShortlistDocument.CandidatePart candidate : document.candidates()) {
            CandidateData data = renamed(candidate.data(), people);
            CandidateId boat = new CandidateId(free(candidate.id(), copy));
            editing.addAs(boat, shortlist, data, who);
            note(boat, candidate.visit(), who);
        }
        return shortlist;
    }

    /** Writes down what was noted about a visit to a boat that has no notes yet. */
    void note(CandidateId boat, VisitNotes notes, String who) {
        if (!notes.equals(VisitNotes.none())) {
            book.save(boat, VisitNotes.none(), notes, who);
            book.move(boat, before -> notes);
        }
    }

    private UUID free(UUID id, boolean copy) {
        return copy || editing.known(id) ? UUID.randomUUID() : id;
    }

    private static CandidateData renamed(CandidateData data, Map<String, String> people) {
        SortedMap<String, Integer> liking = new TreeMap<>();
        data.liking().forEach((person, liked) -> liking.put(people.getOrDefault(person, person), liked));
        return new CandidateData(
                data.name(),
                data.boat(),
                data.listing(),
                data.plate(),
                data.findings(),
                data.liftedRulings(),
                liking,
                data.daysToLaunch(),
                data.notes());
    }
}
