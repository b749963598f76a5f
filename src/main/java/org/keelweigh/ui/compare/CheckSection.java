package org.keelweigh.ui.compare;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import org.keelweigh.appraisal.CheckOutlook;
import org.keelweigh.appraisal.NextChecks;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.shell.Places;

/** What to check next: the checks that could change the choice, most gain for a minute first. */
class CheckSection extends Fold {

    private static final int MOST_SHOWN = 6;
    private static final double WORTH_TELLING = 0.005;

    private final Paragraph sentence = new Paragraph();
    private final OrderedList list = new OrderedList();
    private final Div note = new Div();

    CheckSection() {
        super("What to check next");
        setId("next-checks");
        note.addClassName("kw-soft");
        note.setText(
                "What a check gains is what knowing its result before choosing is worth on average; most results change nothing.");
        put(sentence, list, note);
    }

    void await() {
        sentence.setText("Working it out…");
        list.removeAll();
    }

    void show(Glance glance, NextChecks checks) {
        sentence.setText(checks.sentence());
        list.removeAll();
        checks.outlooks().stream()
                .filter(each -> each.changeChance() >= WORTH_TELLING)
                .limit(MOST_SHOWN)
                .forEach(each -> list.add(item(glance, each)));
    }

    private static ListItem item(Glance glance, CheckOutlook check) {
        Anchor title = new Anchor(
                Places.visit(glance.shortlist(), glance.boat(check.boat()).id()),
                glance.name(check.boat()) + ": " + check.check().title());
        return new ListItem(
                title,
                new Span(" · " + Display.number(check.minutes(), 0) + " minutes · " + check.reason() + " · gains "
                        + glance.display().money(check.gain()) + " on average"));
    }
}
