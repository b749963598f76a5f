package org.keelweigh.ui.offer;

import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.Route;
import java.util.List;
import org.keelweigh.appraisal.AppraisalService;
import org.keelweigh.appraisal.BoatOffer;
import org.keelweigh.appraisal.Measured;
import org.keelweigh.appraisal.Offers;
import org.keelweigh.appraisal.Outlook;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.ui.shell.FactsFeed;
import org.keelweigh.ui.shell.Places;
import org.keelweigh.ui.shell.ShortlistPage;

/** What to offer for each boat, the one that leads first. */
@Route(Places.OFFER)
@StyleSheet("css/offer.css")
public class OfferView extends ShortlistPage {

    private final transient AppraisalService appraisals;

    OfferView(ShortlistEditing editing, FactsFeed feed, AppraisalService appraisals) {
        super(editing, feed);
        this.appraisals = appraisals;
        addClassName("kw-offer");
    }

    @Override
    protected String pageName() {
        return "Offer";
    }

    @Override
    protected void show(Facts facts) {
        removeAll();
        add(new H1("What to offer"));
        if (facts.candidates().isEmpty()) {
            add(new Paragraph(
                    "There is no boat on this shortlist yet. Add one on the compare page, with its asking price."));
            return;
        }
        Measured measured = appraisals.measure(facts);
        Perspective perspective = measured.perspectives().getFirst();
        Outlook outlook = appraisals.outlook(facts);
        List<BoatOffer> offers = Offers.of(outlook, perspective, appraisals.catalogues());
        Paragraph how = new Paragraph(
                "Write these prices down before the call. They come from what each boat is worth to you beside the others, what"
                        + " such a boat usually goes for, and what you have left after everything else it needs.");
        how.addClassName("kw-soft");
        add(how);
        for (int boat : perspective.ranking().order()) {
            add(new BoatOfferPart(measured, offers.get(boat)));
        }
        Div caution = new Div(
                "Estimates, not promises. A repairer's written quote beats any repair figure here. Talk about the boat, never"
                        + " about the seller, and pay only after papers and identity are seen.");
        caution.addClassName("kw-caution");
        add(caution);
    }
}
