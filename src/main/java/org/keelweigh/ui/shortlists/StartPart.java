package org.keelweigh.ui.shortlists;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.TextField;
import java.util.List;
import java.util.Locale;
import org.keelweigh.shortlist.FieldPath;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.UnitSystem;
import org.keelweigh.ui.shell.Places;
import org.keelweigh.ui.shell.Visitor;

/** Starts a shortlist: a name, units and currency, and nothing else. */
final class StartPart extends Div {

    private static final List<String> USUAL =
            List.of("USD", "EUR", "GBP", "CAD", "AUD", "NZD", "CHF", "SEK", "NOK", "DKK");

    private final transient ShortlistEditing editing;
    private final TextField name = new TextField("Name of the shortlist");
    private final RadioButtonGroup<UnitSystem> units = new RadioButtonGroup<>("Units");
    private final ComboBox<String> currency = new ComboBox<>("Currency", USUAL);

    StartPart(ShortlistEditing editing) {
        this.editing = editing;
        name.setTestId("start-name");
        name.setPlaceholder("Kayaks for two");
        name.setMaxLength(200);
        units.setItems(UnitSystem.US, UnitSystem.METRIC);
        units.setItemLabelGenerator(each -> each == UnitSystem.US ? "US: lb, ft" : "Metric: kg, m");
        units.setValue(UnitSystem.METRIC);
        units.setTestId("start-units");
        currency.setValue("USD");
        currency.setTestId("start-currency");
        currency.setAllowCustomValue(true);
        currency.addCustomValueSetListener(
                typed -> currency.setValue(typed.getDetail().strip().toUpperCase(Locale.ROOT)));
        Button start = new Button("Start", click -> start());
        start.setTestId("start");
        Div line = new Div(name, units, currency, start);
        line.addClassNames("kw-row", "kw-shortlists-start");
        Paragraph soft = new Paragraph("Both can be switched at any time.");
        soft.addClassName("kw-soft");
        add(line, soft);
    }

    private void start() {
        boolean named = !name.getValue().isBlank();
        name.setInvalid(!named);
        name.setErrorMessage(named ? "" : "A name is needed.");
        String money = currency.getValue() == null ? "" : currency.getValue();
        boolean known = money.matches("[A-Z]{3}");
        currency.setInvalid(!known);
        currency.setErrorMessage(known ? "" : "The currency must be three letters such as USD or EUR.");
        if (named && known) {
            ShortlistData data = ShortlistData.named(name.getValue().strip()).withUnits(units.getValue());
            Shortlist made = editing.create(new FieldPath("currency").with(data, money), Visitor.name());
            getUI().ifPresent(ui -> ui.navigate(Places.compare(made.id())));
        }
    }
}
