package org.keelweigh.ui.boat;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.Coded;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.listing.Proposal;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.FieldPath;

/**
 * What one proposal from a listing's text would change.
 *
 * @param path the field it would go into; empty where there is none for it
 * @param value what would stand there
 * @param sentence what is proposed, in words with its unit
 * @param certainty how sure the reading is, in words
 */
record Proposed(Optional<String> path, Object value, String sentence, String certainty) {

    static Proposed of(Proposal proposal, BoatDesk desk) {
        Display display = desk.display();
        double amount = proposal.amount().orElse(0);
        String text = proposal.text().orElse("");
        String sure =
                switch (proposal.certainty()) {
                    case PLAIN -> "plainly";
                    case LIKELY -> "likely so";
                    case UNSURE -> "look again";
                };
        return switch (proposal.fact()) {
            case LENGTH_M -> field("boat.lengthM", amount, "Length " + display.length(amount), sure);
            case BEAM_M -> field("boat.beamM", amount, "Beam " + display.breadth(amount), sure);
            case HULL_MASS_KG -> field("boat.bareMassKg", amount, "Hull " + display.mass(amount), sure);
            case RATED_LOAD_KG -> field("boat.ratedLoadKg", amount, "Rated load " + display.mass(amount), sure);
            case ASKING_PRICE -> field("listing.askingPrice", amount, "Asking price " + display.money(amount), sure);
            case PRICE_NEW -> field("boat.priceNew", amount, "Price new " + display.money(amount), sure);
            case CURRENCY -> new Proposed(Optional.empty(), text, currency(text, display), sure);
            case MODEL_YEAR -> field("boat.modelYear", (int) amount, "Model year " + (int) amount, sure);
            case AGE_YEARS -> {
                int year = desk.measured().situation().thisYear() - (int) Math.round(amount);
                yield field("boat.modelYear", year, "Model year " + year + ", from its age", sure);
            }
            case KIND ->
                field(
                        "boat.kind",
                        text,
                        "Kind: " + Coded.parse(BoatKind.class, text).label(),
                        sure);
            case MATERIAL ->
                field(
                        "boat.material",
                        text,
                        "Material: " + Coded.parse(HullMaterial.class, text).label(),
                        sure);
            case DRIVE ->
                field(
                        "boat.drive",
                        text,
                        "Drive: " + Coded.parse(DriveKind.class, text).label(),
                        sure);
            case INCLUDED_GEAR ->
                field(
                        "listing.included." + text,
                        1,
                        "Comes with it: "
                                + GearKind.of(text).map(GearKind::words).orElse(text),
                        sure);
            case PLACE -> field("notes", text, "Place: " + text + " (goes into the notes)", sure);
            case HULL_NUMBER -> field("plate.number", text, "Hull number " + text, sure);
        };
    }

    /** Tells the candidate with what is proposed taken over; notes are added to, everything else is replaced. */
    CandidateData into(CandidateData data) {
        return new FieldPath(path.orElseThrow())
                .with(data, path.get().equals("notes") ? withNotes(data.notes()) : value);
    }

    private String withNotes(@Nullable String notes) {
        String place = "Place: " + value;
        return notes == null || notes.isBlank() ? place : notes + "\n" + place;
    }

    private static Proposed field(String path, Object value, String sentence, String certainty) {
        return new Proposed(Optional.of(path), value, sentence, certainty);
    }

    private static String currency(String code, Display display) {
        return code.equals(display.currency())
                ? "Prices are in " + code + ", as on this shortlist"
                : "Prices are in " + code + ", but this shortlist counts in " + display.currency()
                        + ": change them before you take them over";
    }
}
