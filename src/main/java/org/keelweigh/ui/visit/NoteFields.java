package org.keelweigh.ui.visit;

import com.vaadin.flow.component.textfield.NumberField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import org.jspecify.annotations.Nullable;
import org.keelweigh.shortlist.FieldPath;
import org.keelweigh.shortlist.VisitNotes;

/** Fields for what is written down about a visit besides the findings; each is kept as soon as somebody leaves it. */
final class NoteFields {

    private static final int LONGEST_LINE = 200;
    private static final int LONGEST_TEXT = 1000;
    private static final double MOST_MONEY = 1_000_000;

    private NoteFields() {}

    /** Makes a field for one line. */
    static TextField line(VisitDesk desk, String field, String label) {
        TextField line = new TextField(label);
        line.setMaxLength(LONGEST_LINE);
        line.setWidthFull();
        line.setTestId(field);
        line.setValue(text(desk.notes(), field));
        line.addValueChangeListener(change -> desk.note(field, blank(change.getValue())));
        return line;
    }

    /** Makes a field for several lines. */
    static TextArea lines(VisitDesk desk, String field, String label) {
        TextArea lines = new TextArea(label);
        lines.setMaxLength(LONGEST_TEXT);
        lines.setWidthFull();
        lines.setValue(text(desk.notes(), field));
        lines.addValueChangeListener(change -> desk.note(field, blank(change.getValue())));
        return lines;
    }

    /** Makes a field for an amount of money. */
    static NumberField money(VisitDesk desk, String field, String label) {
        NumberField money = new NumberField(
                label + ", " + desk.facts().shortlist().data().currency());
        money.setMin(0);
        money.setMax(MOST_MONEY);
        money.setTestId(field);
        money.setValue(new FieldPath(field).number(desk.notes()).orElse(null));
        money.addValueChangeListener(change -> desk.note(field, money.isInvalid() ? null : change.getValue()));
        return money;
    }

    private static String text(VisitNotes notes, String field) {
        return new FieldPath(field).text(notes).orElse("");
    }

    /** Reads what stands in a field; nothing where it is blank. */
    static @Nullable String blank(String words) {
        return words.isBlank() ? null : words.strip();
    }
}
