package org.keelweigh.shortlist.store;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.keelweigh.shortlist.Change;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.shortlist.ShortlistStore;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Repository;

/** Keeps shortlists in a relational database by Spring Data JDBC. */
@Repository
class JdbcShortlistStore implements ShortlistStore {

    private final ShortlistEntries entries;
    private final EntryChanges changes;
    private final Clock clock;

    JdbcShortlistStore(ShortlistEntries entries, EntryChanges changes, Clock clock) {
        this.entries = entries;
        this.changes = changes;
        this.clock = clock;
    }

    @Override
    public List<Entry> shortlists() {
        return entries.findByKindAndDeletedAtIsNullOrderByCreatedAtDesc(Kind.SHORTLIST).stream()
                .map(ShortlistEntry::entry)
                .toList();
    }

    @Override
    public List<Entry> members(Kind kind, ShortlistId shortlist) {
        return entries.findMembers(kind.name(), shortlist.value()).stream()
                .map(ShortlistEntry::entry)
                .toList();
    }

    @Override
    public Optional<Entry> find(Kind kind, UUID id) {
        return entries.find(kind.name(), id).map(ShortlistEntry::entry);
    }

    @Override
    public Entry insert(Kind kind, UUID id, UUID shortlist, String document, String who) {
        long position = entries.nextPosition(kind.name(), shortlist);
        ShortlistEntry row =
                entries.save(new ShortlistEntry(id, null, kind, shortlist, position, now(), null, document));
        return recorded(row.entry(), who);
    }

    @Override
    public Optional<Entry> update(Entry seen, String document, String who) {
        ShortlistEntry row = entries.findById(seen.id()).orElseThrow();
        try {
            return Optional.of(recorded(
                    entries.save(row.withDocument(seen.version(), document)).entry(), who));
        } catch (OptimisticLockingFailureException e) {
            return Optional.empty();
        }
    }

    @Override
    public void setDeleted(Kind kind, UUID id, boolean deleted) {
        entries.setDeletedAt(id, deleted ? now() : null);
    }

    @Override
    public List<Change> history(UUID id) {
        return changes.findByEntryIdOrderByIdDesc(id).stream()
                .map(EntryChange::change)
                .toList();
    }

    @Override
    public Optional<Change> lastChange(ShortlistId shortlist) {
        return changes.findLastOf(shortlist.value()).map(EntryChange::change);
    }

    private Entry recorded(Entry entry, String who) {
        changes.save(new EntryChange(null, entry.id(), entry.version(), now(), who, entry.document()));
        return entry;
    }

    /** Databases keep microseconds; what is told now must equal what is read later. */
    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
