package org.keelweigh.ui.visit;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Focusable;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.NumberField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.keelweigh.shortlist.FieldPath;
import org.keelweigh.shortlist.VisitNotes;

/**
 * Fields for what is written down about a visit besides the findings. Each is kept as soon as somebody leaves it, and follows
 * what others write there unless somebody is in it.
 */
final class NoteFields {

    private static final int LONGEST_LINE = 200;
    private static final int LONGEST_TEXT = 1000;
    private static final int LEAST_MINUTES = 5;
    private static final int MOST_MINUTES = 480;
    private static final double MOST_MONEY = 1_000_000;

    private final VisitDesk desk;
    private final List<Kept<?>> fields = new ArrayList<>();

    NoteFields(VisitDesk desk) {
        this.desk = desk;
    }

    /** Makes a field for one line. */
    TextField line(String field, String label) {
        TextField line = new TextField(label);
        line.setMaxLength(LONGEST_LINE);
        line.setWidthFull();
        line.setTestId(field);
        keep(line, field, NoteFields::text, NoteFields::blank, words -> true);
        return line;
    }

    /** Makes a field for several lines, kept while somebody writes. */
    TextArea lines(String field, String label) {
        TextArea lines = new TextArea(label);
        lines.setMaxLength(LONGEST_TEXT);
        lines.setWidthFull();
        lines.setValueChangeMode(ValueChangeMode.LAZY);
        lines.setTestId(field);
        keep(lines, field, NoteFields::text, NoteFields::blank, words -> true);
        return lines;
    }

    /** Makes a field for an amount of money. */
    NumberField money(String field, String label) {
        NumberField money =
                new NumberField(label + ", " + desk.facts().shortlist().data().currency());
        money.setMin(0);
        money.setMax(MOST_MONEY);
        money.setTestId(field);
        keep(
                money,
                field,
                (notes, path) -> path.number(notes).orElse(null),
                value -> value,
                value -> value == null || value >= 0 && value <= MOST_MONEY);
        return money;
    }

    /** Makes a field for the minutes that people give themselves. */
    IntegerField minutes(String label) {
        IntegerField minutes = new IntegerField(label);
        minutes.setMin(LEAST_MINUTES);
        minutes.setMax(MOST_MINUTES);
        minutes.setStep(LEAST_MINUTES);
        minutes.setStepButtonsVisible(true);
        minutes.setTestId("minutes");
        keep(
                minutes,
                "minutes",
                (notes, path) -> VisitDesk.minutes(notes),
                value -> value,
                value -> value != null && value >= LEAST_MINUTES && value <= MOST_MINUTES);
        return minutes;
    }

    /** Shows what others wrote meanwhile, in the fields that nobody is in. */
    void refresh() {
        fields.forEach(Kept::follow);
    }

    private <F extends Component & Focusable<?> & HasValue<?, V>, V> void keep(
            F input, String field, Reading<V> read, Function<V, @Nullable Object> write, Predicate<V> fits) {
        Kept<V> kept = new Kept<>(input, new FieldPath(field), read, write);
        kept.show();
        input.addFocusListener(event -> kept.focused = true);
        input.addBlurListener(event -> kept.focused = false);
        input.addValueChangeListener(change -> {
            if (!kept.showing && fits.test(change.getValue())) {
                kept.save();
            }
        });
        fields.add(kept);
    }

    private static String text(VisitNotes notes, FieldPath path) {
        return path.text(notes).orElse("");
    }

    /** Reads what stands in a field; nothing where it is blank. */
    static @Nullable String blank(String words) {
        return words.isBlank() ? null : words.strip();
    }

    @FunctionalInterface
    private interface Reading<V> {
        V of(VisitNotes notes, FieldPath path);
    }

    /** A field on the page, and the notes from which it was last shown. */
    private final class Kept<V> {
        private final HasValue<?, V> input;
        private final FieldPath path;
        private final Reading<V> read;
        private final Function<V, @Nullable Object> write;
        private VisitNotes shown;
        private boolean focused;
        private boolean showing;

        Kept(HasValue<?, V> input, FieldPath path, Reading<V> read, Function<V, @Nullable Object> write) {
            this.input = input;
            this.path = path;
            this.read = read;
            this.write = write;
            this.shown = desk.notes();
        }

        void save() {
            @Nullable Object mine = write.apply(input.getValue());
            desk.note(path.copied(shown, desk.notes()), notes -> path.with(notes, mine), this::show);
        }

        void follow() {
            if (!focused) {
                show();
            }
        }

        void show() {
            shown = desk.notes();
            showing = true;
            input.setValue(read.of(shown, path));
            showing = false;
        }
    }
}
