package org.keelweigh.shortlist;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Keeps shortlists. Every method runs in the caller's transaction. */
public interface ShortlistStore {

    /** The three things that are stored each with a version of its own. */
    enum Kind {
        SHORTLIST,
        CANDIDATE,
        PERSON
    }

    /**
     * One stored thing.
     *
     * @param kind what it is
     * @param id which one
     * @param shortlist the shortlist it belongs to, itself for a shortlist
     * @param version counts its saves, from 0
     * @param deleted whether it has been deleted and can be restored
     * @param document what people typed, see {@link Documents}
     */
    record Entry(Kind kind, UUID id, UUID shortlist, long version, boolean deleted, String document) {}

    /** Lists the shortlists that are not deleted, the newest first. */
    List<Entry> shortlists();

    /** Lists what belongs to a shortlist and is not deleted, in its order. */
    List<Entry> members(Kind kind, ShortlistId shortlist);

    /** Finds one thing, deleted or not. */
    Optional<Entry> find(Kind kind, UUID id);

    /** Adds a thing behind those of its kind, with version 0. */
    Entry insert(Kind kind, UUID id, UUID shortlist, String document, String who);

    /**
     * Saves a document over {@code seen}.
     *
     * @return the entry as stored now; empty if its version was no longer that of {@code seen}
     */
    Optional<Entry> update(Entry seen, String document, String who);

    /** Deletes a thing so that it can be restored, or restores it. */
    void setDeleted(Kind kind, UUID id, boolean deleted);

    /** Tells every save of a thing, the newest first. */
    List<Change> history(UUID id);

    /** Tells the last save of a shortlist or of anything that belongs to it. */
    Optional<Change> lastChange(ShortlistId shortlist);
}
