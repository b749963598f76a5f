package org.keelweigh.shortlist.store;

import java.util.List;
import java.util.UUID;
import org.springframework.data.repository.ListCrudRepository;

interface EntryChanges extends ListCrudRepository<EntryChange, Long> {

    List<EntryChange> findByEntryIdOrderByIdDesc(UUID entryId);
}
