package org.keelweigh.ui.weigh;

import com.vaadin.flow.server.VaadinSession;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.keelweigh.appraisal.Measured;
import org.keelweigh.appraisal.Participant;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.appraisal.Yardsticks;
import org.keelweigh.shortlist.ClashWords;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.Person;
import org.keelweigh.shortlist.PersonData;
import org.keelweigh.shortlist.PersonId;
import org.keelweigh.shortlist.Saved;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.ui.shell.SaveNews;
import org.keelweigh.ui.shell.Visitor;

/** Who weighs at this browser, what everybody has said so far, and how an edit is saved. */
final class Scales {

    private static final String ME = "keelweigh.me.";

    private final ShortlistEditing editing;
    private final Facts facts;
    private final Measured measured;
    private @Nullable Person me;

    Scales(ShortlistEditing editing, Facts facts, Measured measured) {
        this.editing = editing;
        this.facts = facts;
        this.measured = measured;
        this.me = whoIsHere().orElse(null);
    }

    /** A lone decider needs no asking. */
    private Optional<Person> whoIsHere() {
        List<Person> deciders = deciders();
        if (deciders.size() == 1) {
            return Optional.of(deciders.getFirst());
        }
        Object kept =
                VaadinSession.getCurrent().getAttribute(ME + facts.shortlist().id());
        return deciders.stream()
                .filter(each -> kept instanceof UUID id && each.id().value().equals(id))
                .findFirst();
    }

    /** Keeps for this session who sits here. */
    static void iAm(ShortlistId shortlist, PersonId id) {
        VaadinSession.getCurrent().setAttribute(ME + shortlist, id.value());
    }

    Facts facts() {
        return facts;
    }

    Measured measured() {
        return measured;
    }

    Yardsticks yardsticks() {
        return measured.yardsticks();
    }

    /** Lists those whose weights count; everybody if nobody's was said to. */
    List<Person> deciders() {
        List<Person> deciders =
                facts.people().stream().filter(each -> each.data().decides()).toList();
        return deciders.isEmpty() ? facts.people() : deciders;
    }

    Optional<Person> me() {
        return Optional.ofNullable(me);
    }

    /** Tells whether everybody's weights may be seen: there are several deciders and all have said that they are done. */
    boolean revealed() {
        return deciders().size() > 1
                && deciders().stream().allMatch(each -> each.data().weighed());
    }

    /** Tells my perspective under the weights I have said last. */
    Perspective mine() {
        Person person = me().orElseThrow();
        Participant participant = measured.situation().people().stream()
                .filter(each -> each.id().equals(Optional.of(person.id())))
                .findFirst()
                .orElseThrow();
        return measured.perspective(participant).with(yardsticks().weights(person.data()));
    }

    SortedMap<String, Double> swings() {
        return yardsticks().swings(me().orElseThrow().data());
    }

    private ClashWords words() {
        return new ClashWords(
                measured.situation().display(), id -> yardsticks().name(id).orElse(id));
    }

    /** Saves an edit of my own weighing. */
    void edit(UnaryOperator<PersonData> change) {
        Person seen = me().orElseThrow();
        Person edited = new Person(seen.id(), seen.shortlist(), seen.version(), change.apply(seen.data()));
        Saved<Person> saved = editing.save(edited, Visitor.name());
        me = saved.current();
        SaveNews.tell(saved, words(), () -> {
            editing.restore(seen.id(), Visitor.name());
            edit(change);
        });
    }
}
