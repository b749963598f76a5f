package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Grade;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.ReadingUnit;
import org.keelweigh.quantity.Estimate;
import org.keelweigh.shortlist.Bound;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.chart.ChanceGrid;
import org.keelweigh.ui.format.FoldingTable;
import org.keelweigh.ui.format.Quantity;
import org.keelweigh.ui.format.QuantityField;
import org.keelweigh.ui.photo.PhotoStrip;
import org.keelweigh.ui.photo.PhotoUpload;

/** How a check is made, what was noted about it, and what its outcome probably is while nobody has made it. */
final class CheckDetails extends Div {

    private static final int LONGEST_NOTE = 500;

    /** The check whose readings need the temperature taken out. */
    private static final String HOLDS_AIR = "inf-hold";

    private final transient BoatDesk desk;
    private final transient Check check;
    private final Select<Method> method = new Select<>();
    private final TextField note = new TextField("Note");
    private final TextField measured = new TextField();
    private final QuantityField quote;
    private final Div noted;
    private final Paragraph notYet =
            Plain.soft("Tap an outcome first; then method, note, measure and a repairer's quote can be added.");
    private final Div chances = new Div();
    private final PhotoStrip photos;
    private @Nullable ChanceGrid grid;

    CheckDetails(BoatDesk desk, Check check) {
        this.desk = desk;
        this.check = check;
        quote = new QuantityField("Written quote of a repairer", Quantity.MONEY, Bound.MONEY, desk.display());
        noted = Plain.row("kw-boat-form", method, note, measured, quote);
        addClassNames("kw-stack", "kw-boat-details");
        fields();
        NativeButton show = new NativeButton("Show the chances, 100 boats like this one", click -> showGrid());
        show.setTestId("chances-" + check.id());
        chances.add(show);
        photos = new PhotoStrip(desk.album(), photo -> check.title());
        PhotoUpload upload = PhotoUpload.into(desk.album(), desk.candidate().id(), check.id());
        add(how(), noted, notYet, photos, upload, chances);
        if (HOLDS_AIR.equals(check.id())) {
            addComponentAtIndex(1, new AirLossForm(desk.display()));
        }
        showPhotos();
    }

    void refresh() {
        Optional<Finding> finding = desk.finding(check.id());
        noted.setVisible(finding.isPresent());
        notYet.setVisible(finding.isEmpty());
        chances.setVisible(finding.isEmpty() && desk.report().belief().network().knowsCheck(check.id()));
        finding.ifPresent(found -> {
            method.setValue(found.method());
            note.setValue(found.note() == null ? "" : found.note());
            measured.setVisible(check.readingUnit().isPresent() || found.measured() != null);
            if (!measured.isInvalid()) {
                measured.setValue(found.measured() == null ? "" : plain(found.measured()));
            }
            if (!quote.isInvalid()) {
                quote.show(found.quote() == null ? null : found.quote().likely());
            }
        });
        if (grid != null && finding.isEmpty()) {
            grid.setData(Chances.of(check, desk));
        }
    }

    /** Shows the photos of this check, whoever took them and on which page. */
    void showPhotos() {
        photos.show(desk.album().photos(desk.candidate().id()).stream()
                .filter(photo -> check.id().equals(photo.check()))
                .toList());
    }

    private Div how() {
        Div how = new Div(new Paragraph(check.instruction()));
        String wait =
                check.waitingMinutes() > 0 ? ", and " + Math.round(check.waitingMinutes()) + " min of waiting" : "";
        how.add(Plain.soft("Tools: " + check.tools() + ". Takes " + Math.round(check.minutes()) + " min" + wait + "; "
                + check.water().label() + "."));
        check.caution().ifPresent(caution -> how.add(Plain.caution(List.of(caution))));
        Display display = desk.display();
        double factor = desk.measured().situation().priceFactor();
        how.add(FoldingTable.of(
                "What each fault costs to put right",
                List.of("outcome", "put right by", "then", "low", "likely", "high"),
                check.grades().stream()
                        .map(each -> grade(each, display, factor))
                        .toList(),
                3));
        return how;
    }

    private static List<String> grade(Grade grade, Display display, double factor) {
        Estimate cost = grade.repairCost().times(factor);
        return List.of(
                Plain.capital(grade.outcome().label()),
                grade.fixedBy(),
                grade.stop().label() + grade.why().map(why -> ": " + why).orElse(""),
                display.money(cost.low()),
                display.money(cost.likely()),
                display.money(cost.high()));
    }

    private void fields() {
        method.setLabel("How it was looked at");
        method.setItems(Method.values());
        method.setItemLabelGenerator(each -> Plain.capital(each.label()));
        method.setTestId("method-" + check.id());
        method.addValueChangeListener(change -> {
            if (change.isFromClient() && change.getValue() != null) {
                Method chosen = change.getValue();
                change(old -> new Finding(old.check(), old.outcome(), chosen, old.measured(), old.note(), old.quote()));
            }
        });
        note.setTestId("note-" + check.id());
        note.setMaxLength(LONGEST_NOTE);
        note.setValueChangeMode(ValueChangeMode.ON_CHANGE);
        note.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                String text =
                        change.getValue().isBlank() ? null : change.getValue().strip();
                change(old -> new Finding(old.check(), old.outcome(), old.method(), old.measured(), text, old.quote()));
            }
        });
        measured.setTestId("measured-" + check.id());
        measured.setLabel(check.readingUnit().map(ReadingUnit::label).orElse("Measured"));
        measured.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                measure(change.getValue());
            }
        });
        quote.setTestId("quote-" + check.id());
        quote.onTyped(typed -> change(old -> new Finding(
                old.check(),
                old.outcome(),
                old.method(),
                old.measured(),
                old.note(),
                typed.map(Estimate::exactly).orElse(null))));
    }

    private void measure(String text) {
        try {
            Double value = text.isBlank() ? null : Double.valueOf(Quantity.NUMBER.parse(text, desk.display()));
            measured.setInvalid(false);
            change(old -> new Finding(old.check(), old.outcome(), old.method(), value, old.note(), old.quote()));
        } catch (IllegalArgumentException e) {
            measured.setErrorMessage(String.valueOf(e.getMessage()));
            measured.setInvalid(true);
        }
    }

    private void change(UnaryOperator<Finding> edit) {
        desk.edit("findings." + check.id(), data -> data.findings().stream()
                .filter(each -> each.check().equals(check.id()))
                .findFirst()
                .map(old -> data.withFinding(edit.apply(old)))
                .orElse(data));
    }

    private void showGrid() {
        grid = new ChanceGrid("100 boats like this one");
        grid.setData(Chances.of(check, desk));
        chances.removeAll();
        chances.add(grid);
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
