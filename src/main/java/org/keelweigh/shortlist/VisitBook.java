package org.keelweigh.shortlist;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.keelweigh.shortlist.ShortlistStore.Entry;
import org.keelweigh.shortlist.ShortlistStore.Kind;
import org.keelweigh.shortlist.VisitNotesStore.Kept;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The notes of the visits: every change is written down at once, and no edit overwrites another. */
@Service
@Transactional
public class VisitBook {

    /** What the fields of notes are called where fields of a boat are spoken of too. */
    public static final String FIELD = "visit.";

    private static final String UNNAMED = "Somebody";

    private final VisitNotesStore store;
    private final ShortlistStore shortlists;
    private final ApplicationEventPublisher events;

    VisitBook(VisitNotesStore store, ShortlistStore shortlists, ApplicationEventPublisher events) {
        this.store = store;
        this.shortlists = shortlists;
        this.events = events;
    }

    /** Reads what was noted about the visit to a boat. */
    @Transactional(readOnly = true)
    public VisitNotes notes(CandidateId boat) {
        return read(store.find(boat));
    }

    /**
     * Saves edited notes, field by field: what others wrote meanwhile into other fields is kept beside it.
     *
     * @param seen the notes that the edit began with
     */
    public Saved<VisitNotes> save(CandidateId boat, VisitNotes seen, VisitNotes edited, String who) {
        Entry owner = shortlists.find(Kind.CANDIDATE, boat.value()).orElseThrow();
        if (owner.deleted()) {
            return new Saved.Gone<>(edited);
        }
        Optional<Kept> kept = store.findToChange(boat);
        VisitNotes now = read(kept);
        if (seen.onTheWayOf(now).equals(now)) {
            return new Saved.Done<>(put(owner, now, edited.onTheWayOf(now), who));
        }
        String by = kept.map(Kept::by).filter(name -> !name.isEmpty()).orElse(UNNAMED);
        ThreeWayMerge.Merged merged =
                ThreeWayMerge.merge(Documents.tree(seen), Documents.tree(edited), Documents.tree(now));
        if (!merged.clashes().isEmpty()) {
            return new Saved.Clashed<>(now, by, named(merged.clashes()));
        }
        VisitNotes both = Documents.read(merged.document(), VisitNotes.class).onTheWayOf(now);
        return new Saved.Merged<>(put(owner, now, both, who), by);
    }

    /**
     * Changes where one is on the way round the boat, as it stands now. Nobody else is told, and nothing that was written
     * can be lost by it.
     */
    public VisitNotes move(CandidateId boat, UnaryOperator<VisitNotes> change) {
        Optional<Kept> kept = store.findToChange(boat);
        VisitNotes now = read(kept);
        VisitNotes moved = now.onTheWayOf(change.apply(now));
        store.put(boat, new Kept(Documents.write(moved), kept.map(Kept::by).orElse("")));
        return moved;
    }

    private VisitNotes put(Entry owner, VisitNotes now, VisitNotes changed, String who) {
        if (!changed.equals(now)) {
            store.put(new CandidateId(owner.id()), new Kept(Documents.write(changed), who));
            events.publishEvent(new FactsChanged(new ShortlistId(owner.shortlist()), who));
        }
        return changed;
    }

    private static VisitNotes read(Optional<Kept> kept) {
        return kept.map(found -> Documents.read(found.document(), VisitNotes.class))
                .orElseGet(VisitNotes::none);
    }

    private static List<Clash> named(List<Clash> clashes) {
        return clashes.stream()
                .map(each -> new Clash(FIELD + each.field(), each.mine(), each.theirs()))
                .toList();
    }
}
