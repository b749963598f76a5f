package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import java.util.List;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.haul.RoofLift;
import org.keelweigh.haul.RoofLoading;
import org.keelweigh.haul.RoofRack;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.format.FoldingTable;

/** Putting the boat on the car, person by person, and what the roof has to carry. */
final class LiftPart extends Section {

    private final transient BoatDesk desk;

    LiftPart(BoatDesk desk) {
        this.desk = desk;
        addClassName("kw-stack");
    }

    void refresh() {
        removeAll();
        BoatReport report = desk.report();
        if (!report.boat().kind().rigid()) {
            add(Plain.sheet(
                    "On the car", new Paragraph("Deflated it rides inside the car; nothing has to go on the roof.")));
            return;
        }
        report.loading().forEach(this::person);
        rack(report.rack());
    }

    private void person(RoofLoading loading) {
        Section sheet = Plain.sheet(
                "On to the car: " + loading.lifter().name(),
                new Paragraph(loading.advice()),
                FoldingTable.of(
                        loading.lifter().name() + ": lifting to bars "
                                + desk.display().length(loading.barHeightM()) + " above the ground",
                        List.of(
                                "lift",
                                "verdict",
                                "load in the hands",
                                "limit by the equation",
                                "own limit",
                                "lifting index"),
                        List.of(
                                lift(loading.wholeAlone()),
                                lift(loading.twoPeople()),
                                lift(loading.firstEnd()),
                                lift(loading.secondEnd())),
                        2));
        loading.assumptions().forEach(each -> sheet.add(Plain.row("kw-assumed", new Paragraph("Assumed: " + each))));
        sheet.add(Plain.caution(loading.cautions()));
        add(sheet);
    }

    private List<String> lift(RoofLift lift) {
        Display display = desk.display();
        return List.of(
                Plain.capital(lift.method().label()),
                lift.band().label(),
                display.mass(lift.loadKg()),
                lift.recommendedKg() > 0 ? display.mass(lift.recommendedKg()) : "no lift so high",
                display.mass(lift.personKg()) + (lift.tested() ? ", tested" : ", a guide value"),
                Double.isFinite(lift.index()) ? Display.number(lift.index(), 1) : "–");
    }

    private void rack(RoofRack rack) {
        Display display = desk.display();
        Section sheet = Plain.sheet("On the roof");
        String load = "Boat, bars and cradles weigh " + display.mass(rack.loadKg());
        sheet.add(new Paragraph(
                rack.limitKg().isPresent()
                        ? load + " of the " + display.mass(rack.limitKg().getAsDouble()) + " that may be carried: "
                                + display.percent(rack.ratio().orElse(0)) + "."
                        : load + "; what the roof may carry is not known."));
        told(sheet, "To mend", rack.warnings());
        told(sheet, "Bow and stern lines, because", rack.endLines());
        told(sheet, "How to tie it", rack.advice());
        told(sheet, "Would say more", rack.unknown());
        sheet.add(Plain.caution(rack.cautions()));
        add(sheet);
    }

    private static void told(Section sheet, String heading, List<String> sentences) {
        if (!sentences.isEmpty()) {
            Paragraph head = new Paragraph(heading + ":");
            head.addClassName("kw-boat-lead");
            sheet.add(head, Plain.list(sentences));
        }
    }
}
