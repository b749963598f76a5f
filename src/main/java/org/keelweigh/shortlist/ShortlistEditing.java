package org.keelweigh.shortlist;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.UUID;
import org.keelweigh.shortlist.ShortlistStore.Entry;
import org.keelweigh.shortlist.ShortlistStore.Kind;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import tools.jackson.databind.JsonNode;

/** Reads and edits shortlists: each edit is one transaction, each deletion can be undone, no edit overwrites another. */
@Service
@Transactional
public class ShortlistEditing {

    private final ShortlistStore store;
    private final ApplicationEventPublisher events;

    ShortlistEditing(ShortlistStore store, ApplicationEventPublisher events) {
        this.store = store;
        this.events = events;
    }

    /** Lists all shortlists, the newest first. */
    @Transactional(readOnly = true)
    public List<Shortlist> shortlists() {
        return store.shortlists().stream().map(ShortlistEditing::shortlist).toList();
    }

    /** Reads everything about one shortlist; empty if there is none or it is deleted. */
    @Transactional(readOnly = true)
    public Optional<Facts> facts(ShortlistId id) {
        return store.find(Kind.SHORTLIST, id.value())
                .filter(entry -> !entry.deleted())
                .map(entry -> new Facts(
                        shortlist(entry),
                        store.members(Kind.PERSON, id).stream()
                                .map(ShortlistEditing::person)
                                .toList(),
                        store.members(Kind.CANDIDATE, id).stream()
                                .map(ShortlistEditing::candidate)
                                .toList()));
    }

    /** Begins a shortlist. */
    public Shortlist create(ShortlistData data, String who) {
        return createAs(ShortlistId.fresh(), data, who);
    }

    /** Begins a shortlist under an identifier that came with an imported document. */
    public Shortlist createAs(ShortlistId id, ShortlistData data, String who) {
        Entry entry = store.insert(Kind.SHORTLIST, id.value(), id.value(), Documents.write(data), who);
        tell(entry, who);
        return shortlist(entry);
    }

    /** Puts a boat on a shortlist. */
    public Candidate add(ShortlistId shortlist, CandidateData data, String who) {
        return addAs(CandidateId.fresh(), shortlist, data, who);
    }

    /** Puts a boat on a shortlist under an identifier that came with an imported document. */
    public Candidate addAs(CandidateId id, ShortlistId shortlist, CandidateData data, String who) {
        return candidate(insert(Kind.CANDIDATE, id.value(), shortlist, data, who));
    }

    /** Adds a person to a shortlist. */
    public Person add(ShortlistId shortlist, PersonData data, String who) {
        return addAs(PersonId.fresh(), shortlist, data, who);
    }

    /** Adds a person to a shortlist under an identifier that came with an imported document. */
    public Person addAs(PersonId id, ShortlistId shortlist, PersonData data, String who) {
        return person(insert(Kind.PERSON, id.value(), shortlist, data, who));
    }

    /** Tells whether an identifier has ever been used. */
    @Transactional(readOnly = true)
    public boolean known(UUID id) {
        for (Kind kind : Kind.values()) {
            if (store.find(kind, id).isPresent()) {
                return true;
            }
        }
        return false;
    }

    /** Saves an edited shortlist. */
    public Saved<Shortlist> save(Shortlist edited, String who) {
        return switch (save(Kind.SHORTLIST, edited.id().value(), edited.version(), edited.data(), who)) {
            case Saved.Done<Entry>(Entry now) -> new Saved.Done<>(shortlist(now));
            case Saved.Merged<Entry>(Entry now, String by) -> new Saved.Merged<>(shortlist(now), by);
            case Saved.Clashed<Entry>(Entry now, String by, List<Clash> clashes) ->
                new Saved.Clashed<>(shortlist(now), by, clashes);
            case Saved.Gone<Entry> gone -> new Saved.Gone<>(edited);
        };
    }

    /** Saves an edited candidate. */
    public Saved<Candidate> save(Candidate edited, String who) {
        return switch (save(Kind.CANDIDATE, edited.id().value(), edited.version(), edited.data(), who)) {
            case Saved.Done<Entry>(Entry now) -> new Saved.Done<>(candidate(now));
            case Saved.Merged<Entry>(Entry now, String by) -> new Saved.Merged<>(candidate(now), by);
            case Saved.Clashed<Entry>(Entry now, String by, List<Clash> clashes) ->
                new Saved.Clashed<>(candidate(now), by, clashes);
            case Saved.Gone<Entry> gone -> new Saved.Gone<>(edited);
        };
    }

    /** Saves an edited person. */
    public Saved<Person> save(Person edited, String who) {
        return switch (save(Kind.PERSON, edited.id().value(), edited.version(), edited.data(), who)) {
            case Saved.Done<Entry>(Entry now) -> new Saved.Done<>(person(now));
            case Saved.Merged<Entry>(Entry now, String by) -> new Saved.Merged<>(person(now), by);
            case Saved.Clashed<Entry>(Entry now, String by, List<Clash> clashes) ->
                new Saved.Clashed<>(person(now), by, clashes);
            case Saved.Gone<Entry> gone -> new Saved.Gone<>(edited);
        };
    }

    /** Deletes a shortlist; {@link #restore(ShortlistId, String)} undoes it. */
    public void delete(ShortlistId id, String who) {
        setDeleted(Kind.SHORTLIST, id.value(), true, who);
    }

    /** Deletes a candidate; {@link #restore(CandidateId, String)} undoes it. */
    public void delete(CandidateId id, String who) {
        setDeleted(Kind.CANDIDATE, id.value(), true, who);
    }

    /** Deletes a person; {@link #restore(PersonId, String)} undoes it. */
    public void delete(PersonId id, String who) {
        setDeleted(Kind.PERSON, id.value(), true, who);
    }

    /** Undoes a deletion. */
    public void restore(ShortlistId id, String who) {
        setDeleted(Kind.SHORTLIST, id.value(), false, who);
    }

    /** Undoes a deletion. */
    public void restore(CandidateId id, String who) {
        setDeleted(Kind.CANDIDATE, id.value(), false, who);
    }

    /** Undoes a deletion. */
    public void restore(PersonId id, String who) {
        setDeleted(Kind.PERSON, id.value(), false, who);
    }

    /** Tells every save of a candidate, the newest first. */
    @Transactional(readOnly = true)
    public List<Change> history(CandidateId id) {
        return store.history(id.value());
    }

    /** Tells the last save of a shortlist or of anything on it; empty if there is no such shortlist. */
    @Transactional(readOnly = true)
    public Optional<Change> lastChange(ShortlistId id) {
        return store.lastChange(id);
    }

    /**
     * Makes an earlier state of a candidate the present one; the states in between stay in its history.
     *
     * @throws NoSuchElementException if the candidate never had that version
     */
    public Candidate returnTo(CandidateId id, long version, String who) {
        Entry now = store.find(Kind.CANDIDATE, id.value()).orElseThrow();
        String earlier = document(id.value(), version)
                .orElseThrow(() -> new NoSuchElementException("This boat has no state number " + version));
        Entry saved = store.update(now, earlier, who).orElseThrow();
        tell(saved, who);
        return candidate(saved);
    }

    private Entry insert(Kind kind, UUID id, ShortlistId shortlist, Object data, String who) {
        Entry entry = store.insert(kind, id, shortlist.value(), Documents.write(data), who);
        tell(entry, who);
        return entry;
    }

    private Saved<Entry> save(Kind kind, UUID id, long seenVersion, Object data, String who) {
        Entry now = store.find(kind, id).orElseThrow();
        if (now.deleted()) {
            return new Saved.Gone<>(now);
        }
        String document = Documents.write(data);
        if (now.version() == seenVersion) {
            if (now.document().equals(document)) {
                return new Saved.Done<>(now);
            }
            return new Saved.Done<>(store(now, document, who));
        }
        String by = store.history(id).getFirst().who();
        String base = document(id, seenVersion).orElse(now.document());
        ThreeWayMerge.Merged merged = ThreeWayMerge.merge(
                Documents.read(base, JsonNode.class),
                Documents.read(document, JsonNode.class),
                Documents.read(now.document(), JsonNode.class));
        if (!merged.clashes().isEmpty()) {
            return new Saved.Clashed<>(now, by, merged.clashes());
        }
        return new Saved.Merged<>(store(now, merged.document().toString(), who), by);
    }

    private Entry store(Entry now, String document, String who) {
        Entry saved = store.update(now, document, who)
                .orElseThrow(() -> new IllegalStateException("Another save came in between; please try again"));
        tell(saved, who);
        return saved;
    }

    private Optional<String> document(UUID id, long version) {
        return store.history(id).stream()
                .filter(change -> change.version() == version)
                .map(Change::document)
                .findFirst();
    }

    private void setDeleted(Kind kind, UUID id, boolean deleted, String who) {
        store.setDeleted(kind, id, deleted);
        tell(store.find(kind, id).orElseThrow(), who);
    }

    private void tell(Entry entry, String who) {
        events.publishEvent(new FactsChanged(new ShortlistId(entry.shortlist()), who));
    }

    private static Shortlist shortlist(Entry entry) {
        return new Shortlist(
                new ShortlistId(entry.id()), entry.version(), Documents.read(entry.document(), ShortlistData.class));
    }

    private static Candidate candidate(Entry entry) {
        return new Candidate(
                new CandidateId(entry.id()),
                new ShortlistId(entry.shortlist()),
                entry.version(),
                Documents.read(entry.document(), CandidateData.class));
    }

    private static Person person(Entry entry) {
        return new Person(
                new PersonId(entry.id()),
                new ShortlistId(entry.shortlist()),
                entry.version(),
                Documents.read(entry.document(), PersonData.class));
    }
}
