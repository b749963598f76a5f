package org.keelweigh.ui.compare;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.appraisal.Ruling;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.ClashWords;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.Person;
import org.keelweigh.shortlist.PersonData;
import org.keelweigh.shortlist.Saved;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.ui.shell.SaveNews;
import org.keelweigh.ui.shell.Undo;
import org.keelweigh.ui.shell.Visitor;

/** What can be changed from the dashboard, each change saved at once. */
final class Edits {

    private final ShortlistEditing editing;
    private final ShortlistId shortlist;
    private final ClashWords words;
    private final Runnable changed;

    /**
     * Prepares for edits of one shortlist.
     *
     * @param words says where two edits met
     * @param changed runs after each edit
     */
    Edits(ShortlistEditing editing, ShortlistId shortlist, ClashWords words, Runnable changed) {
        this.editing = editing;
        this.shortlist = shortlist;
        this.words = words;
        this.changed = changed;
    }

    Optional<Facts> facts() {
        return editing.facts(shortlist);
    }

    /** Saves points to the person as seen, or to a new one where nobody was named yet. */
    void save(Optional<Person> seen, String name, Map<String, Double> points) {
        UnaryOperator<PersonData> change = data -> data.withWeights(new TreeMap<>(points));
        if (seen.isPresent()) {
            Person person = seen.get();
            save(new Person(person.id(), shortlist, person.version(), change.apply(person.data())), change);
        } else {
            editing.add(shortlist, change.apply(PersonData.named(name)), Visitor.name());
        }
        changed.run();
    }

    private void save(Person edited, UnaryOperator<PersonData> change) {
        Saved<Person> saved = editing.save(edited, Visitor.name());
        SaveNews.tell(saved, words, () -> {
            if (saved instanceof Saved.Gone<Person>) {
                editing.restore(edited.id(), Visitor.name());
            }
            facts().flatMap(now -> now.person(edited.id()))
                    .ifPresent(now ->
                            save(new Person(now.id(), shortlist, now.version(), change.apply(now.data())), change));
            changed.run();
        });
    }

    /** Lifts a ruling for a written reason, or lets it stand again when the reason is blank. */
    void lift(BoatReport boat, Ruling ruling, String reason) {
        String before = ruling.lifted().orElse("");
        lift(boat.id(), ruling, reason);
        String done = reason.isBlank()
                ? boat.name() + " is ruled out again."
                : boat.name() + ": lifted, for the reason you wrote.";
        Undo.offer(done, () -> lift(boat.id(), ruling, before));
    }

    private void lift(CandidateId boat, Ruling ruling, String reason) {
        facts().flatMap(facts -> facts.candidate(boat)).ifPresent(seen -> {
            Candidate edited = new Candidate(
                    boat,
                    shortlist,
                    seen.version(),
                    seen.data().withLifted(ruling.rule().code(), reason));
            SaveNews.tell(editing.save(edited, Visitor.name()), words, () -> lift(boat, ruling, reason));
        });
        changed.run();
    }

    void remove(BoatReport boat) {
        editing.delete(boat.id(), Visitor.name());
        Undo.offer(boat.name() + " was removed.", () -> editing.restore(boat.id(), Visitor.name()));
    }
}
