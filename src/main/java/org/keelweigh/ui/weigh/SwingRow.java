package org.keelweigh.ui.weigh;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H4;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.slider.IntegerSlider;
import com.vaadin.flow.component.textfield.IntegerField;
import java.util.Optional;
import java.util.function.ObjDoubleConsumer;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.shortlist.Display;

/** The question about one criterion, with its slider. */
final class SwingRow extends Div {

    private static final int MOST = 100;

    private final String id;
    private final IntegerSlider slider;
    private final IntegerField number = new IntegerField();
    private final Span share = new Span();
    private final Paragraph warning = new Paragraph();
    private double points;

    SwingRow(Yardstick yardstick, Display display, ObjDoubleConsumer<String> listener) {
        id = yardstick.id();
        addClassName("kw-weigh-swing");
        slider = new IntegerSlider(0, MOST);
        slider.setAriaLabel(yardstick.name() + ", points");
        slider.setTestId("slider-" + id);
        number.setMin(0);
        number.setMax(MOST);
        number.setAriaLabel(yardstick.name() + ", points as a number");
        number.setTestId("points-" + id);
        slider.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                typed(change.getValue(), listener);
            }
        });
        number.addValueChangeListener(change -> {
            if (change.isFromClient() && change.getValue() != null) {
                typed(Math.clamp(change.getValue(), 0, MOST), listener);
            }
        });
        warning.addClassName("kw-weigh-warning");
        warning.setTestId("warning-" + id);
        share.addClassName("kw-soft");
        Div line = new Div(slider, number, share);
        line.addClassName("kw-weigh-line");
        add(new H4(yardstick.name()), question(yardstick, display), line, warning);
    }

    private static Paragraph question(Yardstick yardstick, Display display) {
        Span step = new Span("From " + yardstick.unit().write(yardstick.swingFrom(), display) + " to "
                + yardstick.unit().write(yardstick.swingTo(), display));
        step.addClassName("kw-weigh-step");
        Span meaning = new Span(": how much would you give for that step, compared with your most important one (100)? "
                + yardstick.meaning() + ".");
        meaning.addClassName("kw-soft");
        return new Paragraph(step, meaning);
    }

    private void typed(int value, ObjDoubleConsumer<String> listener) {
        points = value;
        listener.accept(id, value);
    }

    String id() {
        return id;
    }

    double points() {
        return points;
    }

    void show(double now, double shareNow, Optional<String> warned) {
        points = now;
        int rounded = (int) Math.round(now);
        slider.setValue(rounded);
        number.setValue(rounded);
        share.setText(Display.number(100 * shareNow, 0) + " % of the weight");
        warning.setText(warned.orElse(""));
        warning.setVisible(warned.isPresent());
    }
}
