package org.keelweigh.ui.visit;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.ConditionAssessment;
import org.keelweigh.condition.Finding;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.photo.PhotoStrip;
import org.keelweigh.ui.photo.PhotoUpload;

/** After the walk: what was found and what it means, people and terms, papers, photos, and results from elsewhere. */
final class FinishPanel extends Div implements VisitPanel {

    private final transient VisitDesk desk;
    private final Section found = new Section();
    private final PhotoStrip photos;
    private final transient NoteFields notes;

    FinishPanel(VisitDesk desk) {
        this.desk = desk;
        this.notes = new NoteFields(desk);
        this.photos = new PhotoStrip(desk.album(), photo -> title(photo.check()));
        addClassName("kw-stack");
        found.addClassName("kw-sheet");
        PhotoUpload upload = PhotoUpload.into(desk.album(), desk.candidate().id(), null);
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
        notes.refresh();
    }

    private String summary(BoatReport report) {
        ConditionAssessment condition = report.condition();
        double factor = desk.measured().situation().priceFactor();
        Display display = desk.measured().situation().display();
        return condition.progress().made() + " of " + condition.progress().applicable()
                + " checks made; evidence grade " + condition.progress().grade() + ". Condition: "
                + condition.conditionClass().label() + ". Repairs: about "
                + display.money(condition.knownRepairs().likely() * factor) + " for what was found, and about "
                + display.money(condition.hidden().mean() * factor) + " for what may still be hidden.";
    }

    private static ListItem line(Check check, Finding finding) {
        return new ListItem(check.title() + ": " + finding.outcome().label()
                + (finding.measured() == null ? "" : ", " + check.told(finding.measured()))
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
        return PreparePanel.sheet(
                "For the papers",
                new Paragraph("Kept with this boat and written into the record and the bill of sale."),
                notes.line("place", "Place of the visit"),
                notes.line("present", "Who was there"),
                notes.line("seller", "Seller's name"),
                notes.line("buyer", "Buyer's name"),
                notes.lines("included", "What goes with the boat"),
                notes.money("agreedPrice", "Agreed price"));
    }
}
