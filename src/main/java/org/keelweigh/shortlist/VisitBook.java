package org.keelweigh.shortlist;

import java.util.function.UnaryOperator;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The notes of the visits: every change is written down at once. */
@Service
@Transactional
public class VisitBook {

    private final VisitNotesStore store;

    VisitBook(VisitNotesStore store) {
        this.store = store;
    }

    /** Reads what was noted about the visit to a boat. */
    @Transactional(readOnly = true)
    public VisitNotes notes(CandidateId boat) {
        return store.find(boat)
                .map(document -> Documents.read(document, VisitNotes.class))
                .orElseGet(VisitNotes::none);
    }

    /** Changes the notes as they stand now and writes them down. */
    public VisitNotes change(CandidateId boat, UnaryOperator<VisitNotes> change) {
        VisitNotes changed = change.apply(notes(boat));
        store.put(boat, Documents.write(changed));
        return changed;
    }
}
