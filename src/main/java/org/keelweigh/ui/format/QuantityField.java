package org.keelweigh.ui.format;

import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.keelweigh.shortlist.Bound;
import org.keelweigh.shortlist.Display;

/**
 * A field for a quantity that may be unknown. It keeps the value in SI units and rewrites it only when somebody types, so a
 * value seen in other units comes back unchanged. Where nobody said, the assumption stands below as such.
 */
public class QuantityField extends TextField {

    private final Quantity quantity;
    private final Bound bound;
    private final transient Display display;
    private transient Consumer<Optional<Double>> listener = value -> {};
    private @Nullable Double value;

    /**
     * Makes an empty field.
     *
     * @param label what it asks for
     * @param quantity what kind of quantity
     * @param bound outside which a value is refused
     * @param display the units people read and type in
     */
    public QuantityField(String label, Quantity quantity, Bound bound, Display display) {
        super(label);
        this.quantity = quantity;
        this.bound = bound;
        this.display = display;
        addClassName("kw-quantity");
        String unit = quantity.unit(display);
        if (!unit.isEmpty()) {
            setSuffixComponent(new Span(unit));
        }
        setClearButtonVisible(true);
        setValueChangeMode(ValueChangeMode.ON_CHANGE);
        addValueChangeListener(change -> {
            if (change.isFromClient()) {
                typed(change.getValue());
            }
        });
    }

    /** Shows a value in SI units; {@code null} means nobody said. */
    public QuantityField show(@Nullable Double si) {
        value = si;
        setInvalid(false);
        setValue(si == null ? "" : quantity.edit(si, display));
        return this;
    }

    /** Shows below the field what is assumed while it is empty. */
    public QuantityField assume(double si, String why) {
        setPlaceholder(quantity.edit(si, display));
        setHelperText(value == null ? "Assumed: " + why : "");
        return this;
    }

    /** Hears each value that somebody typed and that can be kept. */
    public QuantityField onTyped(Consumer<Optional<Double>> consumer) {
        listener = consumer;
        return this;
    }

    /** Tells the value in SI units; empty means nobody said. */
    public Optional<Double> si() {
        return Optional.ofNullable(value);
    }

    private void typed(String text) {
        try {
            @Nullable Double read = text.isBlank() ? null : Double.valueOf(quantity.parse(text, display));
            Optional<String> complaint = read == null ? Optional.empty() : bound.complaint(read, display);
            if (complaint.isPresent()) {
                refuse(complaint.get());
                return;
            }
            setInvalid(false);
            if (!Objects.equals(read, value)) {
                value = read;
                listener.accept(Optional.ofNullable(read));
            }
        } catch (IllegalArgumentException e) {
            refuse(String.valueOf(e.getMessage()));
        }
    }

    private void refuse(String sentence) {
        setErrorMessage(sentence);
        setInvalid(true);
    }
}
