package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Span;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.boat.Figure;
import org.keelweigh.shortlist.Bound;
import org.keelweigh.shortlist.FieldPath;
import org.keelweigh.ui.format.Quantity;
import org.keelweigh.ui.format.QuantityField;

/** A field for one figure of the boat: saved at once, with the assumption below while nobody said. */
final class FactField extends QuantityField implements Refreshing {

    private final transient BoatDesk desk;
    private final transient FieldPath path;
    private final transient Quantity quantity;
    private final boolean whole;
    private transient @Nullable Function<BoatReport, Figure> assumption;
    private String hint = "Nobody said yet.";

    private FactField(BoatDesk desk, String label, String path, Quantity quantity, Bound bound, boolean whole) {
        super(label, quantity, bound, desk.display());
        this.desk = desk;
        this.path = new FieldPath(path);
        this.quantity = quantity;
        this.whole = whole;
        setTestId("field-" + path);
        onTyped(this::save);
    }

    static FactField of(BoatDesk desk, String label, String path, Quantity quantity, Bound bound) {
        return new FactField(desk, label, path, quantity, bound, false);
    }

    /** Makes a field for a whole number with words for its unit. */
    static FactField whole(BoatDesk desk, String label, String path, Bound bound, String unit) {
        FactField field = new FactField(desk, label, path, Quantity.NUMBER, bound, true);
        if (!unit.isEmpty()) {
            field.setSuffixComponent(new Span(unit));
        }
        return field;
    }

    /** Shows this figure as assumed while nobody said. */
    FactField assumed(Function<BoatReport, Figure> figure) {
        assumption = figure;
        return this;
    }

    /** Tells below the empty field what it is for, where nothing is assumed. */
    FactField hinted(String words) {
        hint = words;
        return this;
    }

    @Override
    public void refresh() {
        if (!isInvalid()) {
            show(path.number(desk.data()).orElse(null));
        }
        Optional<String> doubt = desk.doubt(path.path());
        setClassName("kw-doubted", doubt.isPresent());
        setHelperText("");
        if (doubt.isPresent()) {
            setHelperText("Look again: " + doubt.get());
        } else if (si().isEmpty()) {
            unknown();
        }
    }

    private void unknown() {
        if (assumption == null) {
            setHelperText(hint);
            return;
        }
        Figure figure = assumption.apply(desk.report());
        if (whole) {
            assume(figure.value(), Math.round(figure.value()) + ", " + figure.reason() + ".");
        } else {
            assume(figure.value(), quantity.write(figure.value(), desk.display()) + ", " + figure.reason() + ".");
        }
    }

    private void save(Optional<Double> typed) {
        if (whole && typed.filter(value -> value != Math.rint(value)).isPresent()) {
            refuse("This has to be a whole number.");
            return;
        }
        desk.set(path.path(), typed.map(this::kept).orElse(null)).ifPresent(this::refuse);
    }

    private Object kept(Double value) {
        if (whole) {
            return (int) Math.round(value);
        }
        return value;
    }

    private void refuse(String sentence) {
        setErrorMessage(sentence);
        setInvalid(true);
    }
}
