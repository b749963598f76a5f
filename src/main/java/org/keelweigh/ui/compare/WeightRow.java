package org.keelweigh.ui.compare;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.slider.IntegerSlider;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.shortlist.Display;

/** One criterion: a slider and a number field for its points, and what share they come to. */
class WeightRow extends Div {

    private static final int MOST_POINTS = 100;
    private static final int SEND_EVERY_MS = 100;
    /** The answer to a last step reaches the page before the rest is asked for, which is ten times as much to draw. */
    private static final int AT_REST_MS = 150;

    private static final double TELLS_NOTHING = 0.0005;
    private static final double TELLS_LITTLE = 0.02;

    /** Hears of points: while they are being moved, and when they were let go. */
    interface Listener {
        void moved(String criterion, double points);

        void released();
    }

    private final String criterion;
    private final transient Listener listener;
    private final Span share = new Span();
    private final IntegerSlider slider = new IntegerSlider(0, MOST_POINTS);
    private final IntegerField field = new IntegerField();
    private final Paragraph warning = new Paragraph();

    WeightRow(Yardstick yardstick, Display display, Listener listener) {
        this.criterion = yardstick.id();
        this.listener = listener;
        addClassName("kw-weight");
        Span name = new Span(yardstick.name());
        name.setId("weight-name-" + criterion);
        name.addClassName("kw-weight-name");
        share.addClassName("kw-soft");
        Div head = new Div(name, share);
        head.addClassName("kw-weight-head");
        Paragraph swing = new Paragraph(swing(yardstick, display));
        swing.addClassNames("kw-soft", "kw-weight-swing");
        swing.setId("weight-swing-" + criterion);
        configure(yardstick);
        Div control = new Div(slider, field);
        control.addClassName("kw-weight-control");
        warning.addClassName("kw-weight-warning");
        warning.setTestId("warning-" + criterion);
        add(head, control, swing, warning);
    }

    private static String swing(Yardstick yardstick, Display display) {
        return "From " + yardstick.unit().write(yardstick.swingFrom(), display) + " to "
                + yardstick.unit().write(yardstick.swingTo(), display) + ". " + yardstick.meaning() + ".";
    }

    private void configure(Yardstick yardstick) {
        slider.setAriaLabel("Points for " + yardstick.name());
        slider.setTestId("slider-" + criterion);
        slider.setValueChangeMode(ValueChangeMode.TIMEOUT);
        slider.setValueChangeTimeout(SEND_EVERY_MS);
        slider.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                listener.moved(criterion, change.getValue());
            }
        });
        slider.getElement()
                .addEventListener("change", event -> listener.released())
                .debounce(AT_REST_MS);
        field.setAriaLabel("Points for " + yardstick.name() + ", 0 to 100");
        field.setTestId("points-" + criterion);
        field.setMin(0);
        field.setMax(MOST_POINTS);
        field.setStepButtonsVisible(true);
        field.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                typed(change.getValue());
            }
        });
    }

    private void typed(@Nullable Integer points) {
        if (points == null || points < 0 || points > MOST_POINTS) {
            field.setErrorMessage("0 to 100 points");
            field.setInvalid(true);
        } else {
            listener.moved(criterion, points);
            listener.released();
        }
    }

    /** Shows points and what they come to; a slider that stands there already is left alone. */
    void show(double points, double weight, double effective, Optional<String> warned) {
        int whole = (int) Math.round(points);
        if (slider.getValue() == null || slider.getValue() != whole) {
            slider.setValue(whole);
        }
        if (field.getValue() == null || field.getValue() != whole) {
            field.setValue(whole);
        }
        share.setText(Display.number(100 * weight, 0) + " % of the weight, " + told(weight, effective));
        warning.setText(warned.orElse(""));
        warning.setVisible(warned.isPresent());
    }

    private static String told(double weight, double effective) {
        if (weight > 0 && effective < TELLS_NOTHING) {
            return "does not tell these boats apart";
        }
        if (weight > TELLS_LITTLE && effective < TELLS_LITTLE) {
            return "hardly tells these boats apart";
        }
        return Display.number(100 * effective, 0) + " % of the difference";
    }
}
