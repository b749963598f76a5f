package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.Month;
import java.time.Year;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.keelweigh.appraisal.Trust;
import org.keelweigh.boat.identity.HullNumber;
import org.keelweigh.boat.identity.HullNumberReading;
import org.keelweigh.boat.identity.IdentityCheck;
import org.keelweigh.boat.identity.PlateState;
import org.keelweigh.boat.identity.Suggestion;
import org.keelweigh.ui.format.FoldingTable;

/** The hull identification number: how the plate is, what its characters say, and what that means for the deal. */
final class HullNumberPart extends Section {

    private static final int LONGEST = 60;

    private final transient BoatDesk desk;
    private final Select<PlateState> state = new Select<>();
    private final TextField number = new TextField("Characters on the plate");
    private final Div reading = new Div();
    private final Div verdict = new Div();

    HullNumberPart(BoatDesk desk) {
        this.desk = desk;
        state.setLabel("The plate");
        state.setItems(PlateState.values());
        state.setItemLabelGenerator(each -> Plain.capital(IdentityWords.of(each)));
        state.setTestId("plate-state");
        state.addValueChangeListener(change -> {
            if (change.isFromClient() && change.getValue() != null) {
                desk.set("plate.state", Trust.code(change.getValue()));
            }
        });
        number.setTestId("plate-number");
        number.setMaxLength(LONGEST);
        number.setHelperText("12 characters, or 14 with the country; starboard side of the stern.");
        number.setValueChangeMode(ValueChangeMode.LAZY);
        number.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                typed(change.getValue());
            }
        });
        reading.setTestId("plate-reading");
        reading.getElement().setAttribute("aria-live", "polite");
        verdict.setTestId("plate-verdict");
        add(Plain.sheet("Hull number", Plain.row("kw-boat-form", state, number), reading, verdict));
    }

    void refresh() {
        state.setValue(Trust.plateState(desk.data().plate().state()));
        String kept = desk.data().plate().number();
        String shown = kept == null ? "" : kept;
        if (!number.getValue().strip().equals(shown)) {
            number.setValue(shown);
        }
        IdentityCheck check = desk.report().trust().identity();
        read(shown);
        verdict.removeAll();
        verdict.add(new Paragraph("Verdict: " + IdentityWords.of(check.verdict()) + "."), Plain.list(check.reasons()));
        if (!check.settles().isEmpty()) {
            verdict.add(new Paragraph("What settles it:"), Plain.list(check.settles()));
        }
    }

    private void typed(String text) {
        desk.set("plate.number", text.isBlank() ? null : text.strip());
    }

    private void read(String text) {
        reading.removeAll();
        if (text.isBlank()) {
            return;
        }
        HullNumberReading found =
                HullNumberReading.of(text, Year.of(desk.measured().situation().thisYear()));
        switch (found) {
            case HullNumberReading.WellFormed fits -> reading.add(parts(fits.number()));
            case HullNumberReading.Malformed broken -> reading.add(new Paragraph(broken.sentence()));
        }
        found.normalised().forEach(each -> reading.add(Plain.soft(each)));
        found.suggestions().forEach(each -> reading.add(suggestion(each)));
    }

    private Div suggestion(Suggestion suggestion) {
        String text = suggestion.number().text();
        NativeButton accept = new NativeButton("It reads " + text, click -> typed(text));
        accept.setTestId("plate-suggestion");
        return Plain.row("kw-row", accept, Plain.soft(suggestion.explanation()));
    }

    private static Div parts(HullNumber number) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Format", number.format().words()));
        number.country().ifPresent(country -> rows.add(List.of("Country", country)));
        rows.add(List.of("Maker's code", number.makerCode()));
        rows.add(List.of("Serial", number.serial()));
        String month = Month.of(number.month()).getDisplayName(TextStyle.FULL, Locale.UK);
        rows.add(List.of(
                "Built or certified",
                month + " "
                        + String.join(
                                " or ",
                                number.certificationYears().stream()
                                        .map(String::valueOf)
                                        .toList())));
        number.modelYear().ifPresent(year -> rows.add(List.of("Model year", String.valueOf(year))));
        return FoldingTable.of("What the number says", List.of("part", "meaning"), rows, 2);
    }
}
