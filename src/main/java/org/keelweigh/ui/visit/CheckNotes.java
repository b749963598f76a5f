package org.keelweigh.ui.visit;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.NumberField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.function.BiConsumer;
import java.util.function.UnaryOperator;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.ReadingUnit;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.Saved;

/** What somebody measured and noted at a check; it is there once the check has a result. */
final class CheckNotes extends Div {

    private static final int LONGEST_NOTE = 2000;

    private final transient VisitDesk desk;
    private final transient Check check;
    private final transient BiConsumer<Saved<Candidate>, Outcome> saved;
    private final TextArea note = new TextArea("Note");
    private final NumberField measure = new NumberField();

    /**
     * Makes the fields.
     *
     * @param saved hears what came of each save, and the result that the check has
     */
    CheckNotes(VisitDesk desk, Check check, BiConsumer<Saved<Candidate>, Outcome> saved) {
        this.desk = desk;
        this.check = check;
        this.saved = saved;
        note.setMaxLength(LONGEST_NOTE);
        note.setWidthFull();
        note.setValueChangeMode(ValueChangeMode.LAZY);
        note.setTestId("note");
        note.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                save(found -> new Finding(
                        found.check(),
                        found.outcome(),
                        found.method(),
                        found.measured(),
                        NoteFields.blank(change.getValue()),
                        found.quote()));
            }
        });
        measure.setTestId("measure");
        measure.setLabel(check.readingUnit().map(ReadingUnit::label).orElse("Measured"));
        measure.setVisible(check.readingUnit().isPresent());
        measure.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                save(found -> new Finding(
                        found.check(),
                        found.outcome(),
                        found.method(),
                        change.getValue(),
                        found.note(),
                        found.quote()));
            }
        });
        add(measure, note);
    }

    /** Shows what is noted, in place of whatever stands there. */
    void show(Finding found) {
        note.setValue(found.note() == null ? "" : found.note());
        measure.setValue(found.measured());
        measure.setVisible(check.readingUnit().isPresent() || found.measured() != null);
    }

    void clear() {
        note.clear();
        measure.clear();
    }

    private void save(UnaryOperator<Finding> change) {
        desk.finding(check.id()).ifPresent(found -> {
            Finding finding = change.apply(found);
            saved.accept(desk.save(data -> data.withFinding(finding)), finding.outcome());
        });
    }
}
