package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextField;
import java.util.List;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.ui.shell.Places;
import org.keelweigh.ui.shell.Undo;
import org.keelweigh.ui.shell.Visitor;

/** Which boat this is, where it stands, and what rules it out. */
final class BoatHeader extends Header {

    private final transient BoatDesk desk;
    private final H1 name = new H1();
    private final TextField rename = new TextField("Name");
    private final Span place = new Span();
    private final Span working = new Span("Working out what that changes …");
    private final Verdicts verdicts;
    private final RulingList rulings;

    BoatHeader(BoatDesk desk, BoatSection section) {
        this.desk = desk;
        verdicts = new Verdicts(desk);
        rulings = new RulingList(desk);
        addClassName("kw-boat-header");
        place.addClassName("kw-soft");
        place.setTestId("boat-place");
        working.addClassName("kw-boat-working");
        working.setTestId("boat-working");
        rename.setVisible(false);
        rename.setTestId("boat-name");
        rename.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                named(change.getValue());
            }
        });
        NativeButton edit = new NativeButton("Rename", click -> {
            rename.setVisible(!rename.isVisible());
            rename.focus();
        });
        edit.setTestId("boat-rename");
        NativeButton remove = new NativeButton("Take it off the list", click -> remove());
        remove.setTestId("boat-remove");
        add(
                neighbours(section),
                Plain.row("kw-row", name, edit, remove),
                rename,
                Plain.row("kw-row", place, verdicts, working),
                rulings);
        refresh();
    }

    /** Shows what was just saved; who waits longer than a moment for what follows is told so. */
    void saved() {
        name.setText(desk.data().name());
        working.setVisible(desk.working());
    }

    /** Shows name, place and verdicts as they are now. */
    void refresh() {
        saved();
        if (!rename.isInvalid()) {
            rename.setValue(desk.data().name());
        }
        place.setText(Plain.capital(desk.data().boat().kind().label()) + " · " + place());
        verdicts.refresh();
        rulings.refresh();
    }

    private String place() {
        Perspective perspective = desk.measured().perspectives().getFirst();
        int boat = desk.place();
        if (perspective.ruledOut(boat)) {
            return "ruled out, so it has no place";
        }
        String forWhom = perspective.person().isEmpty() ? "for all of you together" : "for " + perspective.name();
        return perspective.size() == 1
                ? "the only boat here yet"
                : "place " + perspective.ranking().rank(boat) + " of " + perspective.size() + " " + forWhom;
    }

    private void named(String typed) {
        desk.edit("name", data -> data.named(typed.strip()))
                .ifPresentOrElse(
                        sentence -> {
                            rename.setErrorMessage(sentence);
                            rename.setInvalid(true);
                        },
                        () -> {
                            rename.setInvalid(false);
                            rename.setVisible(false);
                        });
    }

    private void remove() {
        ShortlistEditing editing = desk.editing();
        CandidateId id = desk.candidate().id();
        ShortlistId list = desk.facts().shortlist().id();
        editing.delete(id, Visitor.name());
        getUI().ifPresent(ui -> {
            ui.navigate(Places.compare(list));
            Undo.offer(desk.data().name() + " is off the list.", () -> editing.restore(id, Visitor.name()));
        });
    }

    private Div neighbours(BoatSection section) {
        List<Candidate> all = desk.facts().candidates();
        int here = desk.place();
        Div row = Plain.row("kw-row");
        row.addClassName("kw-boat-neighbours");
        row.add(link(Places.compare(desk.facts().shortlist().id()), "All boats", "all boats"));
        if (here > 0) {
            row.add(neighbour(all.get(here - 1), "‹ ", "", section));
        }
        if (here < all.size() - 1) {
            row.add(neighbour(all.get(here + 1), "", " ›", section));
        }
        Anchor visit = link(
                Places.visit(desk.facts().shortlist().id(), desk.candidate().id()),
                "Visit: checks, photos, papers",
                "Visit: checks, photos, papers");
        visit.setTestId("boat-visit");
        row.add(visit);
        return row;
    }

    private static Anchor neighbour(Candidate boat, String before, String after, BoatSection section) {
        String which = before.isEmpty() ? "Next boat: " : "Previous boat: ";
        return link(
                Places.boat(boat.shortlist(), boat.id(), section.code()),
                before + boat.data().name() + after,
                which + boat.data().name());
    }

    private static Anchor link(String target, String text, String label) {
        Anchor link = new Anchor(target, text);
        link.setRouterIgnore(false);
        link.getElement().setAttribute("aria-label", label);
        return link;
    }
}
