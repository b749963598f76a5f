package org.keelweigh.shortlist.store;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.keelweigh.shortlist.Change;
import org.springframework.data.annotation.Id;

/** A row of the history: one save of one entry. */
record EntryChange(
        @Id @Nullable Long id, UUID entryId, long version, Instant changedAt, String changedBy, String document) {

    Change change() {
        return new Change(version, changedAt, changedBy, document);
    }
}
