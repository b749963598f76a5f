package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.boat.identity.IdentityVerdict;
import org.keelweigh.condition.ListingVerdict;
import org.keelweigh.condition.Progress;
import org.keelweigh.haul.CartVerdict;
import org.keelweigh.haul.LiftBand;
import org.keelweigh.haul.RoofLoading;

/** The verdicts of all sections in a few words each. */
final class Verdicts extends Div {

    private final transient BoatDesk desk;

    Verdicts(BoatDesk desk) {
        this.desk = desk;
        addClassName("kw-row");
        setTestId("boat-verdicts");
    }

    void refresh() {
        BoatReport report = desk.report();
        Progress progress = report.condition().progress();
        removeAll();
        add(
                Plain.tag(
                        desk.measured().situation().horizonYears() + "-year cost "
                                + desk.display().money(report.cost().presentValue()),
                        Plain.Tone.QUIET),
                Plain.tag(
                        "checked: grade " + progress.grade() + ", "
                                + desk.display().percent(progress.evidenceShare()) + " of the risk",
                        Plain.Tone.QUIET),
                cart(report.cart().verdict()));
        if (report.boat().kind().rigid()) {
            add(lift(report.loading().getFirst()));
        }
        add(
                listing(report.trust().listing().verdict()),
                identity(report.trust().identity().verdict()));
    }

    private static Span cart(CartVerdict verdict) {
        return Plain.tag(
                "to the water: " + verdict.label(),
                switch (verdict) {
                    case ONE_PERSON -> Plain.Tone.GOOD;
                    case TWO_PEOPLE -> Plain.Tone.WARN;
                    case NOT_BY_CART -> Plain.Tone.BAD;
                });
    }

    private static Span lift(RoofLoading loading) {
        LiftBand band = loading.alone();
        return Plain.tag(
                "on the car alone: " + band.label(),
                switch (band) {
                    case COMFORTABLE -> Plain.Tone.GOOD;
                    case HARD -> Plain.Tone.WARN;
                    case NO -> Plain.Tone.BAD;
                });
    }

    private static Span listing(ListingVerdict verdict) {
        return Plain.tag(
                "listing: " + verdict.label(),
                switch (verdict) {
                    case GO_ON -> Plain.Tone.GOOD;
                    case ASK_FOR_PROOF, PAPERS_FIRST -> Plain.Tone.WARN;
                    case STOP -> Plain.Tone.BAD;
                });
    }

    private static Span identity(IdentityVerdict verdict) {
        return Plain.tag(
                "hull number: " + IdentityWords.of(verdict),
                switch (verdict) {
                    case IN_ORDER -> Plain.Tone.GOOD;
                    case NOTHING_TO_CHECK, NOT_LOOKED -> Plain.Tone.QUIET;
                    case ASK_FOR_PAPERS -> Plain.Tone.WARN;
                    case RULED_OUT -> Plain.Tone.BAD;
                });
    }
}
