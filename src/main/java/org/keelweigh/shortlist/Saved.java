package org.keelweigh.shortlist;

import java.util.List;

/**
 * What came of saving an edit.
 *
 * @param <A> what was edited
 */
public sealed interface Saved<A> {

    /** Tells what is stored now. */
    A current();

    /**
     * The edit was saved.
     *
     * @param current what is stored now
     */
    record Done<A>(A current) implements Saved<A> {}

    /**
     * Somebody else had changed other fields meanwhile; both edits were kept.
     *
     * @param current what is stored now
     * @param by who the other was
     */
    record Merged<A>(A current, String by) implements Saved<A> {}

    /**
     * Somebody else had changed the same fields meanwhile; nothing was saved.
     *
     * @param current what is stored now
     * @param by who the other was
     * @param clashes the fields in question
     */
    record Clashed<A>(A current, String by, List<Clash> clashes) implements Saved<A> {
        public Clashed {
            clashes = List.copyOf(clashes);
        }
    }

    /**
     * It had been deleted meanwhile; nothing was saved.
     *
     * @param current what was to be saved
     */
    record Gone<A>(A current) implements Saved<A> {}
}
