package org.keelweigh.ui.boat;

import com.vaadin.flow.component.select.Select;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.keelweigh.boat.Coded;
import org.keelweigh.shortlist.FieldPath;

/**
 * A choice among the values of an enumeration that may be unknown.
 *
 * @param <E> the enumeration
 */
final class ChoiceField<E extends Enum<E> & Coded> extends Select<E> implements Refreshing {

    private final transient BoatDesk desk;
    private final transient FieldPath path;
    private final Class<E> type;
    private final transient Supplier<List<E>> choices;
    private transient Supplier<String> assumption = () -> "Nobody said yet.";
    private transient List<E> offered = List.of();

    ChoiceField(
            BoatDesk desk,
            String label,
            String path,
            Class<E> type,
            Supplier<List<E>> choices,
            Function<E, String> words) {
        this.desk = desk;
        this.path = new FieldPath(path);
        this.type = type;
        this.choices = choices;
        setLabel(label);
        setTestId("field-" + path);
        setItemLabelGenerator(each -> each == null ? "Not known" : Plain.capital(words.apply(each)));
        setEmptySelectionAllowed(true);
        setEmptySelectionCaption("Not known");
        addValueChangeListener(change -> {
            if (change.isFromClient()) {
                desk.set(
                        path,
                        change.getValue() == null ? null : change.getValue().code());
            }
        });
    }

    /** Makes a choice that is always made. */
    ChoiceField<E> needed() {
        setEmptySelectionAllowed(false);
        return this;
    }

    /** Tells below the field what is assumed while nobody said. */
    ChoiceField<E> assumed(Supplier<String> words) {
        assumption = words;
        return this;
    }

    @Override
    public void refresh() {
        List<E> now = choices.get();
        if (!now.equals(offered)) {
            offered = now;
            setItems(now);
        }
        E value = path.text(desk.data()).map(code -> Coded.parse(type, code)).orElse(null);
        setValue(value);
        setHelperText(value == null ? assumption.get() : "");
    }
}
