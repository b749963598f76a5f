package org.keelweigh.shortlist.store;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.keelweigh.shortlist.ShortlistStore.Entry;
import org.keelweigh.shortlist.ShortlistStore.Kind;
import org.springframework.data.annotation.Id;
import org.springframework.data.annotation.Version;

/** A row of the table that holds shortlists, candidates and people, each as a document with a version. */
record ShortlistEntry(
        @Id UUID id,
        @Version @Nullable Long version,
        Kind kind,
        UUID shortlistId,
        long position,
        Instant createdAt,
        @Nullable Instant deletedAt,
        String document) {

    Entry entry() {
        return new Entry(kind, id, shortlistId, version == null ? 0 : version, deletedAt != null, document);
    }

    ShortlistEntry withDocument(long seenVersion, String other) {
        return new ShortlistEntry(id, seenVersion, kind, shortlistId, position, createdAt, deletedAt, other);
    }
}
