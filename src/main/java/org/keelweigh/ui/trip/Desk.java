package org.keelweigh.ui.trip;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.keelweigh.appraisal.AppraisalService;
import org.keelweigh.appraisal.Assumption;
import org.keelweigh.shortlist.ClashWords;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.FieldPath;
import org.keelweigh.shortlist.LaunchSite;
import org.keelweigh.shortlist.Person;
import org.keelweigh.shortlist.PersonId;
import org.keelweigh.shortlist.Saved;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.ui.shell.SaveNews;
import org.keelweigh.ui.shell.Visitor;

/** What the page shows now, and how an edit of one field is saved over it. */
final class Desk {

    private final ShortlistEditing editing;
    private final AppraisalService appraisal;
    private Facts facts;
    private List<Assumption> assumptions;

    Desk(ShortlistEditing editing, AppraisalService appraisal, Facts facts) {
        this.editing = editing;
        this.appraisal = appraisal;
        this.facts = facts;
        this.assumptions = appraisal.situation(facts).assumptions();
    }

    /** Takes facts that were read anew. */
    void see(Facts now) {
        facts = now;
        assumptions = appraisal.situation(now).assumptions();
    }

    Facts facts() {
        return facts;
    }

    ShortlistData data() {
        return facts.shortlist().data();
    }

    Display display() {
        return Display.of(facts.shortlist());
    }

    ShortlistEditing editing() {
        return editing;
    }

    AppraisalService appraisal() {
        return appraisal;
    }

    /** Tells what is assumed for a field; empty if nothing is. */
    Optional<String> assumed(String field) {
        return assumptions.stream()
                .filter(each -> each.field().equals(field))
                .map(Assumption::sentence)
                .findFirst();
    }

    private ClashWords words() {
        return new ClashWords(display(), id -> appraisal.catalogues().words(id).orElse(id));
    }

    /** Saves one field of shortlist or trip. */
    void edit(FieldPath field, @Nullable Object value) {
        save(field.with(data(), value));
    }

    /** Saves the launch stretches. */
    void launches(List<LaunchSite> sites) {
        save(new FieldPath("trip.launches").with(data(), sites));
    }

    private void save(ShortlistData edited) {
        Shortlist seen = facts.shortlist();
        Saved<Shortlist> saved = editing.save(new Shortlist(seen.id(), seen.version(), edited), Visitor.name());
        see(new Facts(saved.current(), facts.people(), facts.candidates()));
        SaveNews.tell(saved, words(), () -> {
            editing.restore(seen.id(), Visitor.name());
            save(edited);
        });
    }

    /** Tells what stops a name from being kept; empty if nothing does. */
    Optional<String> complaintAboutName(String name) {
        if (name.isBlank()) {
            return Optional.of("A name is needed.");
        }
        return name.length() > 200 ? Optional.of("The name must not be longer than 200 characters.") : Optional.empty();
    }

    Person person(PersonId id) {
        return facts.person(id).orElseThrow();
    }

    /** Saves one field of a person. */
    void edit(PersonId id, FieldPath field, @Nullable Object value) {
        Person seen = person(id);
        Person edited = new Person(seen.id(), seen.shortlist(), seen.version(), field.with(seen.data(), value));
        Saved<Person> saved = editing.save(edited, Visitor.name());
        Person now = saved.current();
        see(new Facts(
                facts.shortlist(),
                facts.people().stream()
                        .map(each -> each.id().equals(id) ? now : each)
                        .toList(),
                facts.candidates()));
        SaveNews.tell(saved, words(), () -> {
            editing.restore(id, Visitor.name());
            edit(id, field, value);
        });
    }
}
