package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.List;
import java.util.Optional;
import org.keelweigh.listing.ListingText;
import org.keelweigh.listing.Proposal;

/** Reads a listing's text and proposes fact by fact; nothing is taken without a yes. */
final class ListingPaste extends NativeDetails {

    private final transient BoatDesk desk;
    private final TextArea text = new TextArea("The listing's text");
    private final Div proposals = new Div();

    ListingPaste(BoatDesk desk) {
        super("Paste the listing's text, and take from it what is right");
        this.desk = desk;
        addClassNames("kw-sheet", "kw-boat-paste");
        text.setTestId("paste-text");
        text.setWidthFull();
        text.setMaxLength(ListingText.LONGEST_READ);
        text.setValueChangeMode(ValueChangeMode.ON_CHANGE);
        text.setHelperText("It is read here and nowhere else, and not kept.");
        NativeButton read = new NativeButton("Read it", click -> read());
        read.setTestId("paste-read");
        proposals.addClassName("kw-boat-proposals");
        proposals.getElement().setAttribute("aria-live", "polite");
        setContent(Plain.row("kw-stack", text, read, proposals));
    }

    private void read() {
        proposals.removeAll();
        List<Proposal> found = ListingText.read(text.getValue());
        if (found.isEmpty()) {
            proposals.add(
                    Plain.soft(
                            "Nothing was recognised. Lengths, masses, prices, years, kind and gear are read, in US or metric writing."));
        }
        found.forEach(each -> proposals.add(line(each)));
    }

    private Div line(Proposal proposal) {
        Proposed proposed = Proposed.of(proposal, desk);
        Div line = new Div();
        line.addClassName("kw-boat-proposal");
        line.setTestId("proposal-" + proposal.fact().name().toLowerCase(java.util.Locale.ROOT));
        Span what = new Span(proposed.sentence());
        Span words = new Span("read from “" + proposal.words() + "”, " + proposed.certainty());
        words.addClassName("kw-soft");
        Paragraph note = Plain.soft(proposal.note());
        note.setVisible(!proposal.note().isEmpty());
        Div answer = Plain.row("kw-row");
        if (proposed.path().isPresent()) {
            NativeButton take = new NativeButton("Take it", click -> take(proposed, answer));
            NativeButton leave = new NativeButton("Leave it", click -> said(answer, "Left."));
            take.getElement().setAttribute("aria-label", "Take it: " + proposed.sentence());
            leave.getElement().setAttribute("aria-label", "Leave it: " + proposed.sentence());
            answer.add(take, leave);
        }
        line.add(what, words, note, answer);
        return line;
    }

    private void take(Proposed proposed, Div answer) {
        Optional<String> refused = desk.edit(proposed.path().orElseThrow(), proposed::into);
        said(answer, refused.map(why -> "Not taken. " + why).orElse("Taken."));
    }

    private static void said(Div answer, String word) {
        answer.removeAll();
        answer.add(new Span(word));
    }
}
