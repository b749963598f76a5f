package org.keelweigh.report;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatFacts;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.condition.Outcome;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.VisitNotes;

/** A draft of a bill of sale with what is known filled in and blanks for the rest. It is not legal advice and says so. */
public final class BillOfSale {

    private static final Template PAGE = Template.named("bill-of-sale.html");

    private BillOfSale() {}

    /** Writes the page. */
    public static String of(VisitProof proof) {
        VisitNotes notes = proof.notes();
        String printed = proof.time(proof.printed());
        return PAGE.fill(Map.of(
                "boat", Markup.text(proof.boatName()),
                "parties", parties(notes),
                "boat-facts", boat(proof),
                "included",
                        notes.included() == null
                                ? "____________________________________________________________"
                                : Markup.text(notes.included()).replace("\n", "<br />"),
                "price", price(notes, proof.display()),
                "inspected", Markup.text(notes.startedAt() == null ? "____________" : proof.time(notes.startedAt())),
                "faults", faults(proof),
                "place", notes.place() == null ? "&#160;" : Markup.text(notes.place()) + ", ",
                "printed", Markup.text(printed)));
    }

    private static String parties(VisitNotes notes) {
        return VisitProof.row("Seller's full name", notes.seller())
                + VisitProof.row("Seller's address and phone", null)
                + VisitProof.row("Identity paper seen (kind only)", null)
                + VisitProof.row("Buyer's full name", notes.buyer())
                + VisitProof.row("Buyer's address and phone", null);
    }

    private static String boat(VisitProof proof) {
        BoatFacts facts = proof.report().candidate().data().boat();
        Boat boat = proof.report().boat();
        HullMaterial material = facts.material();
        return VisitProof.row("Called", proof.boatName())
                + VisitProof.row("Kind", boat.kind().label() + (material == null ? "" : ", " + material.label()))
                + VisitProof.row("Maker and model as printed", null)
                + VisitProof.row(
                        "Hull identification number",
                        proof.report().candidate().data().plate().number())
                + VisitProof.row("Model year", facts.modelYear() == null ? null : String.valueOf(facts.modelYear()))
                + VisitProof.row(
                        "Length",
                        facts.lengthM() == null ? null : proof.display().length(facts.lengthM()))
                + VisitProof.row("Colour", null)
                + VisitProof.row("Drive, motor, battery: serial numbers", null);
    }

    private static String price(VisitNotes notes, Display display) {
        @Nullable Double agreed = notes.agreedPrice();
        return VisitProof.row("In figures", agreed == null ? null : display.money(agreed))
                + VisitProof.row("In words", null)
                + VisitProof.row("Paid how, and when", null);
    }

    private static String faults(VisitProof proof) {
        List<String> faults = proof.checks().stream()
                .flatMap(check -> proof.finding(check).stream()
                        .filter(found -> found.outcome() != Outcome.FINE && found.outcome() != Outcome.NOT_FITTED)
                        .map(found -> check.title() + " – " + proof.words(check, found)))
                .toList();
        if (faults.isEmpty()) {
            return "<p>None was found. ____________________________________________</p>";
        }
        return faults.stream()
                .map(fault -> "<li>" + Markup.text(fault) + "</li>")
                .collect(Collectors.joining("", "<ul>", "</ul>"));
    }
}
