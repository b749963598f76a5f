package org.keelweigh.ui.boat;

/** A piece of a section that shows what an edit changed without being built anew. */
interface Refreshing {

    /** Shows things as they are now. */
    void refresh();
}
