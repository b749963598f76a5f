package org.keelweigh.ui.visit;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.textfield.NumberField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.textfield.TextFieldBase;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.ConditionAssessment;
import org.keelweigh.condition.Finding;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.VisitNotes;
import org.keelweigh.ui.photo.PhotoStrip;
import org.keelweigh.ui.photo.PhotoUpload;
import org.keelweigh.ui.shell.Visitor;

/** After the walk: what was found and what it means, people and terms, papers, photos, and results from elsewhere. */
final class FinishPanel extends Div implements VisitPanel {

    private final transient VisitDesk desk;
    private final Section found = new Section();
    private final PhotoStrip photos;

    FinishPanel(VisitDesk desk) {
        this.desk = desk;
        this.photos = new PhotoStrip(desk.album(), photo -> title(photo.check()));
        addClassName("kw-stack");
        found.addClassName("kw-sheet");
        PhotoUpload upload = new PhotoUpload(Visitor::name, (picture, who) -> desk.album()
                .add(desk.candidate().id(), null, picture, who)
                .map(photo -> "The photo is saved.")
                .orElse("This boat has as many photos as are kept. Delete one first."));
        add(
                found,
                PreparePanel.sheet("Photos", photos, upload),
                people(),
                new PaperLinks(desk),
                new FieldReturn(desk),
                new SheetLinks(desk));
        refresh();
    }

    @Override
    public void refresh() {
        BoatReport report = desk.report();
        ConditionAssessment condition = report.condition();
        found.removeAll();
        found.add(new H2("What was found"), new Paragraph(summary(report)));
        condition.stops().forEach(stop -> found.add(warning("Do not buy: " + stop.reason(), "kw-stop")));
        condition.asks().forEach(ask -> found.add(warning("Ask first: " + ask.reason(), "kw-caution")));
        condition.unsafe().forEach(fault -> found.add(warning("Mend before launch: " + fault.reason(), "kw-caution")));
        UnorderedList list = new UnorderedList();
        desk.checks().forEach(check -> desk.finding(check.id()).ifPresent(each -> list.add(line(check, each))));
        found.add(list);
        photos.show(desk.photos());
    }

    private String summary(BoatReport report) {
        ConditionAssessment condition = report.condition();
        double factor = desk.measured().situation().priceFactor();
        Display display = desk.measured().situation().display();
        return condition.progress().made() + " of " + condition.progress().applicable()
                + " checks made; evidence grade " + condition.progress().grade() + ". Condition: "
                + condition.conditionClass().label() + ". Repairs: about "
                + display.money(condition.knownRepairs().mean() * factor) + " for what was found, and about "
                + display.money(report.unseenRepairs()) + " for what may still be hidden.";
    }

    private static ListItem line(Check check, Finding finding) {
        return new ListItem(check.title() + ": " + finding.outcome().label()
                + (finding.measured() == null ? "" : ", measured " + Display.number(finding.measured(), 1))
                + (finding.note() == null ? "" : " – " + finding.note()));
    }

    private static Paragraph warning(String words, String className) {
        Paragraph warning = new Paragraph(words);
        warning.addClassName(className);
        return warning;
    }

    private String title(@Nullable String check) {
        return Optional.ofNullable(check)
                .flatMap(desk.inspection()::check)
                .map(Check::title)
                .orElse(desk.name());
    }

    private Section people() {
        VisitNotes notes = desk.notes();
        TextField place = text("Place of the visit", notes.place());
        TextField present = text("Who was there", notes.present());
        TextField seller = text("Seller's name", notes.seller());
        TextField buyer = text("Buyer's name", notes.buyer());
        for (TextField each : List.of(place, present, seller, buyer)) {
            each.addValueChangeListener(change ->
                    desk.note(now -> now.withPeople(blank(place), blank(present), blank(seller), blank(buyer))));
        }
        TextArea included = new TextArea("What goes with the boat");
        included.setMaxLength(1000);
        included.setWidthFull();
        included.setValue(notes.included() == null ? "" : notes.included());
        NumberField price = new NumberField(
                "Agreed price, " + desk.facts().shortlist().data().currency());
        price.setMin(0);
        price.setMax(1_000_000);
        price.setValue(notes.agreedPrice());
        included.addValueChangeListener(change -> terms(included, price));
        price.addValueChangeListener(change -> terms(included, price));
        place.setTestId("place");
        return PreparePanel.sheet(
                "For the papers",
                new Paragraph("Kept with this boat and written into the record and the bill of sale."),
                place,
                present,
                seller,
                buyer,
                included,
                price);
    }

    private void terms(TextArea included, NumberField price) {
        Double value = price.isInvalid() ? null : price.getValue();
        desk.note(now -> now.withTerms(blank(included), value));
    }

    private static TextField text(String label, @Nullable String value) {
        TextField field = new TextField(label);
        field.setMaxLength(200);
        field.setWidthFull();
        field.setValue(value == null ? "" : value);
        return field;
    }

    private static @Nullable String blank(TextFieldBase<?, String> field) {
        return field.getValue().isBlank() ? null : field.getValue().strip();
    }
}
