package org.keelweigh.ui.boat;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.condition.SellerKind;
import org.keelweigh.shortlist.Bound;
import org.keelweigh.ui.format.Quantity;

/** The facts of the boat and its listing, each with the assumption that stands in while nobody said. */
final class FactsPart extends BoatPart {

    private static final int LONGEST_NOTES = 4000;

    private final List<Refreshing> fields = new ArrayList<>();
    private final Paragraph masses = Plain.soft("");
    private final TextArea notes = new TextArea("Notes");

    FactsPart(BoatDesk desk) {
        super(desk);
        add(new ListingPaste(desk));
        Div columns = Plain.row(
                "kw-columns",
                what(),
                listing(),
                size(),
                mass(),
                Plain.sheet("What comes with it", keep(new GearForm(desk))),
                Plain.sheet("Seats", keep(new SeatsForm(desk))),
                people(),
                Plain.sheet("In your own words", notes()));
        add(columns);
        refresh();
    }

    @Override
    void refresh() {
        fields.forEach(Refreshing::refresh);
        Boat boat = desk().report().boat();
        masses.setText("Ready to haul it is " + desk().display().mass(boat.riggedMassKg()) + "; stripped for the car, "
                + desk().display().mass(boat.strippedMassKg()) + ".");
        masses.setTestId("facts-masses");
        String kept = desk().data().notes();
        notes.setValue(kept == null ? "" : kept);
    }

    private Section what() {
        BoatDesk desk = desk();
        return form(
                "What it is",
                keep(new ChoiceField<>(
                                desk,
                                "Kind",
                                "boat.kind",
                                BoatKind.class,
                                () -> List.of(BoatKind.values()),
                                BoatKind::label)
                        .needed()),
                keep(new ChoiceField<>(
                                desk,
                                "Material",
                                "boat.material",
                                HullMaterial.class,
                                this::materials,
                                HullMaterial::label)
                        .assumed(() -> "Assumed: " + boat().material().label() + ", usual for this kind.")),
                keep(new ChoiceField<>(
                                desk,
                                "Drive",
                                "boat.drive",
                                DriveKind.class,
                                () -> List.of(DriveKind.values()),
                                DriveKind::label)
                        .assumed(() -> "Assumed: " + boat().drive().label() + ", usual for this kind.")),
                keep(FactField.whole(desk, "Model year", "boat.modelYear", Bound.MODEL_YEAR, "")
                        .assumed(report -> report.boat().modelYear())),
                keep(FactField.of(desk, "Price new today", "boat.priceNew", Quantity.MONEY, Bound.MONEY)
                        .assumed(report -> report.boat().priceNew())));
    }

    private Section listing() {
        BoatDesk desk = desk();
        return form(
                "The listing",
                keep(FactField.of(desk, "Asking price", "listing.askingPrice", Quantity.MONEY, Bound.MONEY)
                        .assumed(BoatReport::price)),
                keep(new ChoiceField<>(
                                desk,
                                "Seller",
                                "listing.seller",
                                SellerKind.class,
                                () -> List.of(SellerKind.values()),
                                SellerKind::label)
                        .assumed(() -> "Assumed: a private person.")),
                keep(FactField.of(desk, "Way to the seller", "listing.distanceM", Quantity.TRAVEL, Bound.DISTANCE)
                        .hinted("Nobody said yet; fetching it counts into the cost.")),
                keep(FactField.whole(desk, "Days listed", "listing.daysListed", Bound.DAYS, "days")
                        .hinted("Nobody said yet; a long wait helps bargaining.")),
                keep(FactField.whole(desk, "Days to the first launch", "daysToLaunch", Bound.DAYS, "days")
                        .hinted("Nobody said yet: from the deal to the water.")));
    }

    private Section size() {
        BoatDesk desk = desk();
        return form(
                "Size and load",
                keep(FactField.of(desk, "Length", "boat.lengthM", Quantity.LENGTH, Bound.LENGTH)
                        .assumed(report -> report.boat().lengthM())),
                keep(FactField.of(desk, "Beam", "boat.beamM", Quantity.BREADTH, Bound.BEAM)
                        .assumed(report -> report.boat().beamM())),
                keep(FactField.of(desk, "Draught, drive down", "boat.draughtM", Quantity.BREADTH, Bound.DRAUGHT)
                        .assumed(report -> report.boat().draughtM())),
                keep(FactField.of(desk, "Rated load", "boat.ratedLoadKg", Quantity.MASS, Bound.RATED_LOAD)
                        .assumed(report -> report.boat().ratedLoadKg())));
    }

    private Section mass() {
        BoatDesk desk = desk();
        Section form = form(
                "Mass, part by part",
                keep(FactField.of(desk, "Hull alone", "boat.bareMassKg", Quantity.MASS, Bound.BOAT_MASS)
                        .assumed(report -> report.boat().bareMassKg())),
                keep(FactField.of(desk, "Seats", "boat.seatMassKg", Quantity.MASS, Bound.PART_MASS)
                        .assumed(report -> report.boat().seatMassKg())),
                keep(FactField.of(desk, "Drive or motor", "boat.driveMassKg", Quantity.MASS, Bound.PART_MASS)
                        .assumed(report -> report.boat().driveMassKg())),
                keep(FactField.of(desk, "Battery", "boat.batteryMassKg", Quantity.MASS, Bound.PART_MASS)
                        .assumed(report -> report.boat().batteryMassKg())),
                keep(FactField.of(desk, "Other fittings", "boat.fittingsMassKg", Quantity.MASS, Bound.PART_MASS)
                        .assumed(report -> report.boat().fittingsMassKg())));
        form.add(masses);
        return form;
    }

    private Section people() {
        Section form = form("How much you like it, 0 to 10");
        desk().facts()
                .people()
                .forEach(person -> form.add(keep(
                        FactField.whole(desk(), person.data().name(), "liking." + person.id(), Bound.LIKING, "of 10")
                                .hinted("Not said yet; the heart may count, if you give it weight."))));
        if (desk().facts().people().isEmpty()) {
            form.add(
                    Plain.soft(
                            "Add the people who decide on the page about trip and people; each then says how much they like it."));
        }
        return form;
    }

    private TextArea notes() {
        notes.setTestId("field-notes");
        notes.setWidthFull();
        notes.setMaxLength(LONGEST_NOTES);
        notes.setValueChangeMode(ValueChangeMode.ON_CHANGE);
        notes.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                desk().set("notes", change.getValue().isBlank() ? null : change.getValue());
            }
        });
        return notes;
    }

    private List<HullMaterial> materials() {
        List<HullMaterial> usual =
                desk().catalogues().defaults().materialsOf(desk().data().boat().kind());
        return Stream.concat(usual.stream(), Stream.of(HullMaterial.values()))
                .distinct()
                .toList();
    }

    private Boat boat() {
        return desk().report().boat();
    }

    private static Section form(String heading, Component... content) {
        Section form = Plain.sheet(heading, content);
        form.addClassName("kw-boat-form");
        return form;
    }

    private <C extends Component & Refreshing> C keep(C field) {
        fields.add(field);
        return field;
    }
}
