package org.keelweigh.shortlist;

import java.util.Optional;

/** Where the notes of visits are kept, one document for each boat. Every method runs in the caller's transaction. */
public interface VisitNotesStore {

    /**
     * Notes as they are kept.
     *
     * @param document what was written down, see {@link Documents}
     * @param by who saved last; empty where that was not kept
     */
    record Kept(String document, String by) {}

    /** Finds the document about the visit to a boat. */
    Optional<Kept> find(CandidateId boat);

    /** Finds the document and has everybody else who wants to change it wait until the transaction ends. */
    Optional<Kept> findToChange(CandidateId boat);

    /** Keeps a document in place of the one before. */
    void put(CandidateId boat, Kept kept);
}
