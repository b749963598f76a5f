package org.keelweigh.shortlist.store;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jdbc.repository.query.Query;
import org.springframework.data.repository.ListCrudRepository;

interface EntryChanges extends ListCrudRepository<EntryChange, Long> {

    List<EntryChange> findByEntryIdOrderByIdDesc(UUID entryId);

    @Query(
            "select c.* from entry_change c join shortlist_entry e on e.id = c.entry_id where e.shortlist_id = :shortlistId"
                    + " order by c.id desc limit 1")
    Optional<EntryChange> findLastOf(UUID shortlistId);
}
