package org.keelweigh.shortlist;

import java.util.Optional;

/** Where the notes of visits are kept, one document for each boat. */
public interface VisitNotesStore {

    /** Finds the document about the visit to a boat. */
    Optional<String> find(CandidateId boat);

    /** Keeps a document in place of the one before. */
    void put(CandidateId boat, String document);
}
