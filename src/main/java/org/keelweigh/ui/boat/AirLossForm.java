package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.NumberField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.stream.Stream;
import org.keelweigh.condition.AirLoss;
import org.keelweigh.condition.Outcome;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.UnitSystem;

/** Works out what an inflatable lost between two readings, with the cooling taken out; nothing of it is kept. */
final class AirLossForm extends Div {

    private static final String DAY = "a day";
    private static final String TWO_HOURS = "two hours";
    private static final double PSI_PA = 6894.757;
    private static final double BAR_PA = 100_000;
    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double COLDEST_K = 230;
    private static final double WARMEST_K = 340;

    private final boolean us;
    private final NumberField first;
    private final NumberField firstWarmth;
    private final NumberField later;
    private final NumberField laterWarmth;
    private final RadioButtonGroup<String> after = new RadioButtonGroup<>("Time between");
    private final Paragraph verdict = new Paragraph();

    AirLossForm(Display display) {
        us = display.units() == UnitSystem.US;
        first = field("Pressure at first", us ? "psi" : "bar", "air-first");
        firstWarmth = field("Air temperature then", us ? "°F" : "°C", "air-first-warmth");
        later = field("Pressure later", us ? "psi" : "bar", "air-later");
        laterWarmth = field("Air temperature then", us ? "°F" : "°C", "air-later-warmth");
        after.setItems(DAY, TWO_HOURS);
        after.setValue(DAY);
        after.addValueChangeListener(change -> tell());
        verdict.setTestId("air-verdict");
        verdict.getElement().setAttribute("aria-live", "polite");
        addClassName("kw-stack");
        add(
                Plain.soft(
                        "Air that cools presses less without having leaked. Type both readings to see what it lost."),
                Plain.row("kw-boat-form", first, firstWarmth, later, laterWarmth, after),
                verdict);
    }

    private NumberField field(String label, String unit, String testId) {
        NumberField field = new NumberField(label + ", " + unit);
        field.setTestId(testId);
        field.setValueChangeMode(ValueChangeMode.ON_CHANGE);
        field.addValueChangeListener(change -> tell());
        return field;
    }

    private void tell() {
        boolean whole = Stream.of(first, firstWarmth, later, laterWarmth).noneMatch(NumberField::isEmpty);
        verdict.setText(whole ? sentence() : "");
    }

    private String sentence() {
        double firstK = kelvins(firstWarmth.getValue());
        double laterK = kelvins(laterWarmth.getValue());
        if (first.getValue() <= 0 || later.getValue() < 0 || later.getValue() > 2 * first.getValue()) {
            return "The first pressure has to be above 0, and the later one from 0 to at most twice the first.";
        }
        if (Math.min(firstK, laterK) < COLDEST_K || Math.max(firstK, laterK) > WARMEST_K) {
            return "A temperature out of doors lies between " + (us ? "−45 and 150 °F." : "−43 and 66 °C.");
        }
        double share = Math.clamp(
                AirLoss.share(
                        pascals(first.getValue()),
                        firstK,
                        pascals(later.getValue()),
                        laterK,
                        AirLoss.STANDARD_ATMOSPHERE_PA),
                0,
                1);
        boolean day = DAY.equals(after.getValue());
        Outcome outcome = day ? AirLoss.outcomeAfterDay(share) : AirLoss.outcomeAfterTwoHours(share);
        return "With the change of temperature taken out it lost " + Display.number(100 * share, 1)
                + " % of its pressure in " + after.getValue() + ": " + outcome.label() + ".";
    }

    private double pascals(double pressure) {
        return pressure * (us ? PSI_PA : BAR_PA);
    }

    private double kelvins(double warmth) {
        return ZERO_CELSIUS_K + (us ? (warmth - 32) / 1.8 : warmth);
    }
}
