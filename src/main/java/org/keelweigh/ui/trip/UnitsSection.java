package org.keelweigh.ui.trip;

import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import java.util.List;
import org.keelweigh.shortlist.FieldPath;
import org.keelweigh.shortlist.UnitSystem;

/** In which units and which money people read and type. */
final class UnitsSection extends Sheet {

    private static final List<String> USUAL =
            List.of("USD", "EUR", "GBP", "CAD", "AUD", "NZD", "CHF", "SEK", "NOK", "DKK");

    UnitsSection(Desk desk, Fields fields, Runnable anew) {
        super(
                "Units and money",
                "Switch the units at any time: what is kept stays the same, only the way it is written changes. "
                        + "A field also takes other units, such as 12 ft 6 in or 30 kg.");
        RadioButtonGroup<UnitSystem> units = new RadioButtonGroup<>("Units");
        units.setItems(UnitSystem.METRIC, UnitSystem.US);
        units.setItemLabelGenerator(each -> each == UnitSystem.US ? "US: lb, ft, in, mi" : "Metric: kg, m, cm, km");
        units.setValue(desk.data().units());
        units.setTestId("units");
        units.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                desk.edit(new FieldPath("units"), change.getValue());
                anew.run();
            }
        });
        ComboBox<String> currency = fields.currency("currency", "Currency", USUAL);
        currency.setHelperText("Amounts keep their numbers; only the sign changes");
        currency.addValueChangeListener(change -> {
            if (change.isFromClient() && !currency.isInvalid()) {
                anew.run();
            }
        });
        add(row(units, currency));
    }
}
