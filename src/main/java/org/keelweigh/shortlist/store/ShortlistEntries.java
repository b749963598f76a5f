package org.keelweigh.shortlist.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.keelweigh.shortlist.ShortlistStore.Kind;
import org.springframework.data.jdbc.repository.query.Modifying;
import org.springframework.data.jdbc.repository.query.Query;
import org.springframework.data.repository.ListCrudRepository;

/** Reads and writes entries. What every page reads is written as SQL, so that it is not put together anew each time. */
interface ShortlistEntries extends ListCrudRepository<ShortlistEntry, UUID> {

    List<ShortlistEntry> findByKindAndDeletedAtIsNullOrderByCreatedAtDesc(Kind kind);

    @Query("select * from shortlist_entry where kind = :kind and shortlist_id = :shortlistId and deleted_at is null"
            + " order by position")
    List<ShortlistEntry> findMembers(String kind, UUID shortlistId);

    @Query("select * from shortlist_entry where kind = :kind and id = :id")
    Optional<ShortlistEntry> find(String kind, UUID id);

    @Query(
            "select coalesce(max(position), -1) + 1 from shortlist_entry where kind = :kind and shortlist_id = :shortlistId")
    long nextPosition(String kind, UUID shortlistId);

    /** Deleting leaves the version alone: an edit begun before can then be told that the thing is gone. */
    @Modifying
    @Query("update shortlist_entry set deleted_at = :at where id = :id")
    void setDeletedAt(UUID id, @Nullable Instant at);
}
