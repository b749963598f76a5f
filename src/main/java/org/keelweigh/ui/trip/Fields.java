package org.keelweigh.ui.trip;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.Coded;
import org.keelweigh.shortlist.Bound;
import org.keelweigh.shortlist.FieldPath;
import org.keelweigh.shortlist.PersonId;
import org.keelweigh.ui.format.Quantity;
import org.keelweigh.ui.format.QuantityField;

/** Makes fields that show one place of a stored document, save it at once when somebody changes it, and tell what is assumed. */
final class Fields {

    private static final String NOT_SAID = "Not said";

    private final Desk desk;
    private final Supplier<Object> document;
    private final BiConsumer<FieldPath, @Nullable Object> save;
    private final String owner;
    private final List<Runnable> refreshers = new ArrayList<>();

    private Fields(Desk desk, Supplier<Object> document, BiConsumer<FieldPath, @Nullable Object> save, String owner) {
        this.desk = desk;
        this.document = document;
        this.save = save;
        this.owner = owner;
    }

    /** Makes fields of the shortlist and its trip. */
    static Fields ofTrip(Desk desk) {
        return new Fields(desk, desk::data, desk::edit, "");
    }

    /** Makes fields of a person. */
    static Fields ofPerson(Desk desk, PersonId id) {
        return new Fields(
                desk,
                () -> desk.person(id).data(),
                (field, value) -> desk.edit(id, field, value),
                "people." + id + ".");
    }

    /** Shows everything as it is stored now. */
    void refresh() {
        refreshers.forEach(Runnable::run);
    }

    QuantityField quantity(String path, String label, Quantity quantity, Bound bound) {
        return quantity(path, label, quantity, bound, "");
    }

    /** Makes a field for a quantity; the hint stands below it when nothing is assumed. */
    QuantityField quantity(String path, String label, Quantity quantity, Bound bound, String hint) {
        QuantityField field = new QuantityField(label, quantity, bound, desk.display());
        FieldPath place = new FieldPath(path);
        field.onTyped(value -> save(place, value.orElse(null)));
        return shown(field, path, () -> {
            field.show(place.number(document.get()).orElse(null));
            field.setHelperText(help(path, hint));
        });
    }

    /** Makes a field for a whole number. */
    QuantityField whole(String path, String label, Bound bound) {
        QuantityField field = new QuantityField(label, Quantity.NUMBER, bound, desk.display());
        FieldPath place = new FieldPath(path);
        field.onTyped(
                value -> save(place, value.map(each -> (int) Math.round(each)).orElse(null)));
        return shown(field, path, () -> {
            field.show(place.number(document.get()).orElse(null));
            field.setHelperText(help(path, ""));
        });
    }

    /** Makes a choice among the constants of an enumeration, or none. */
    <E extends Enum<E> & Coded> Select<String> choice(
            String path, String label, Class<E> type, Function<E, String> name) {
        Map<String, String> names = new LinkedHashMap<>();
        for (E each : type.getEnumConstants()) {
            names.put(each.code(), name.apply(each));
        }
        return choice(path, label, names);
    }

    /** Makes a choice among codes, each with its name, or none. */
    Select<String> choice(String path, String label, Map<String, String> names) {
        FieldPath place = new FieldPath(path);
        Select<String> select = select(label, names);
        select.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                save(place, change.getValue());
            }
        });
        return shown(select, path, () -> {
            select.setValue(
                    place.text(document.get()).filter(names::containsKey).orElse(null));
            select.setHelperText(help(path, ""));
        });
    }

    /** Makes a choice among whole numbers, each with its name, or none. */
    Select<String> level(String path, String label, List<String> names) {
        Map<String, String> byNumber = new LinkedHashMap<>();
        for (int level = 0; level < names.size(); level++) {
            byNumber.put(String.valueOf(level), names.get(level));
        }
        FieldPath place = new FieldPath(path);
        Select<String> select = select(label, byNumber);
        select.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                save(place, change.getValue() == null ? null : Integer.valueOf(change.getValue()));
            }
        });
        return shown(select, path, () -> {
            select.setValue(place.number(document.get())
                    .map(each -> String.valueOf(each.intValue()))
                    .orElse(null));
            select.setHelperText(help(path, ""));
        });
    }

    private static Select<String> select(String label, Map<String, String> names) {
        Select<String> select = new Select<>();
        select.setLabel(label);
        select.setItems(names.keySet());
        select.setItemLabelGenerator(code -> code == null ? NOT_SAID : names.getOrDefault(code, code));
        select.setEmptySelectionAllowed(true);
        select.setEmptySelectionCaption(NOT_SAID);
        return select;
    }

    /** Makes a yes or no. */
    Checkbox flag(String path, String label) {
        FieldPath place = new FieldPath(path);
        Checkbox box = new Checkbox(label);
        box.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                save(place, change.getValue());
            }
        });
        return shown(box, path, () -> box.setValue(place.flag(document.get()).orElse(false)));
    }

    /** Makes a field for a name, which cannot be left empty. */
    TextField name(String path, String label) {
        FieldPath place = new FieldPath(path);
        TextField field = new TextField(label);
        field.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                Optional<String> complaint = desk.complaintAboutName(change.getValue());
                field.setInvalid(complaint.isPresent());
                field.setErrorMessage(complaint.orElse(""));
                if (complaint.isEmpty()) {
                    save(place, change.getValue().strip());
                }
            }
        });
        return shown(
                field, path, () -> field.setValue(place.text(document.get()).orElse("")));
    }

    /** Makes a choice of currency, in which any three letters may be typed. */
    ComboBox<String> currency(String path, String label, List<String> usual) {
        FieldPath place = new FieldPath(path);
        ComboBox<String> box = new ComboBox<>(label, usual);
        box.setAllowCustomValue(true);
        box.addCustomValueSetListener(typed -> currency(box, place, typed.getDetail()));
        box.addValueChangeListener(change -> {
            if (change.isFromClient() && change.getValue() != null) {
                currency(box, place, change.getValue());
            }
        });
        return shown(box, path, () -> box.setValue(place.text(document.get()).orElse("USD")));
    }

    private void currency(ComboBox<String> box, FieldPath place, String typed) {
        String code = typed.strip().toUpperCase(Locale.ROOT);
        boolean wrong = !code.matches("[A-Z]{3}");
        box.setInvalid(wrong);
        box.setErrorMessage(wrong ? "The currency must be three letters such as USD or EUR." : "");
        if (!wrong) {
            save(place, code);
        }
    }

    private void save(FieldPath place, @Nullable Object value) {
        save.accept(place, value);
        refresh();
    }

    private <C extends Component> C shown(C field, String path, Runnable refresher) {
        field.setTestId(path);
        refreshers.add(refresher);
        refresher.run();
        return field;
    }

    private String help(String path, String hint) {
        return desk.assumed(owner + path).map(each -> "Assumed: " + each).orElse(hint);
    }
}
