package org.keelweigh.ui.offer;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.Optional;
import org.keelweigh.appraisal.BoatOffer;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.appraisal.Measured;
import org.keelweigh.appraisal.OfferWords;
import org.keelweigh.appraisal.Tie;
import org.keelweigh.cost.Argument;
import org.keelweigh.cost.OfferPlan;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.chart.OfferCurve;
import org.keelweigh.ui.shell.Places;

/** The offer for one boat: three prices, the arguments, and how its chances hang on its price. */
final class BoatOfferPart extends Section {

    private final transient BoatReport report;
    private final transient Display display;

    BoatOfferPart(Measured measured, BoatOffer offer) {
        this.report = measured.boats().get(offer.boat());
        this.display = measured.situation().display();
        addClassNames("kw-sheet", "kw-offer-boat");
        setId("offer-" + report.id());
        add(new H2(report.name()));
        switch (offer) {
            case BoatOffer.None none -> none(measured, none);
            case BoatOffer.Offer made -> made(made);
        }
    }

    private void none(Measured measured, BoatOffer.None none) {
        add(new Paragraph(none.reason()));
        report.ruledOutBy().ifPresent(ruling -> add(new Paragraph("What would lift it: " + ruling.remedy())));
        add(new Anchor(
                Places.boat(measured.facts().shortlist().id(), report.id(), "inspection"), "Open " + report.name()));
    }

    private void made(BoatOffer.Offer offer) {
        offer.plan()
                .ifPresentOrElse(
                        plan -> offer(plan, offer),
                        () -> add(new Paragraph(
                                "No price is worth paying for it as things stand: another boat is worth more to you even if this one were"
                                        + " a gift, or nothing is left of your budget.")));
        add(new Paragraph(tie(offer)));
        arguments(offer);
        OfferCurve curve =
                new OfferCurve(report.name() + ": how its chance of being the best choice falls with its price");
        curve.setData(OfferCurves.of(offer, report.name(), display));
        add(curve, fair(offer));
    }

    private void offer(OfferPlan plan, BoatOffer.Offer offer) {
        if (plan.worthMaking()) {
            add(prices(plan, offer), new Paragraph(OfferWords.paid(plan, display)));
        } else {
            add(new Paragraph(OfferWords.of(plan, display)));
        }
    }

    private Div prices(OfferPlan plan, BoatOffer.Offer offer) {
        Div row = new Div(
                price("Open with", plan.opening(), "leaves room to meet"),
                price("Aim for", plan.target(), aim(plan)),
                price("Walk away above", plan.walkAway(), walkAway(plan, offer)));
        row.addClassName("kw-offer-prices");
        return row;
    }

    private static String aim(OfferPlan plan) {
        return plan.target() < plan.walkAway()
                ? "what such a boat goes for, repairs taken off"
                : "less than such a boat goes for; more is not worth it to you";
    }

    private String walkAway(OfferPlan plan, BoatOffer.Offer offer) {
        if (offer.tie() instanceof Tie.At(double tie) && Math.abs(tie - plan.walkAway()) < 1) {
            return "above it another boat is better";
        }
        return plan.walkAway() >= offer.asking() ? "no more than is asked" : "your budget ends here";
    }

    private Div price(String label, double amount, String note) {
        Span name = new Span(label);
        name.addClassName("kw-soft");
        Span value = new Span(display.money(amount));
        value.addClassName("kw-offer-price");
        Span why = new Span(note);
        why.addClassName("kw-soft");
        Div price = new Div(name, value, why);
        price.addClassName("kw-offer-figure");
        return price;
    }

    private String tie(BoatOffer.Offer offer) {
        String asked =
                (report.price().isAssumed() ? "No asking price is known; the usual price is " : "It is offered at ")
                        + display.money(offer.asking()) + ". ";
        return asked
                + switch (offer.tie()) {
                    case Tie.At(double price) ->
                        price >= offer.asking()
                                ? "It stays the better choice up to " + display.money(price) + "."
                                : "It would be as good as the best other boat at " + display.money(price) + ".";
                    case Tie.AtAnyPrice(double upTo) ->
                        "It stays the better choice even at " + display.money(upTo) + ".";
                    case Tie.AtNoPrice none -> "Even as a gift another boat would be worth more to you.";
                    case Tie.NoOther none -> "There is no other boat to compare it with.";
                };
    }

    private void arguments(BoatOffer.Offer offer) {
        if (offer.arguments().isEmpty()) {
            add(new Paragraph(
                    "Nothing was found yet that speaks for a lower price. Every check you make may add to it."));
            return;
        }
        add(new H3("What to show the seller"));
        UnorderedList list = new UnorderedList();
        offer.arguments().forEach(each -> list.add(new ListItem(argument(each))));
        add(list);
    }

    private String argument(Argument argument) {
        String basis =
                switch (argument.basis()) {
                    case DOCUMENTED -> "";
                    case SUSPECTED -> " (suspected, not proved: better ask for a test)";
                    case MISSING_KIT ->
                        " (about " + display.money(argument.cost().likely()) + ")";
                };
        String off = Optional.ofNullable(argument.off())
                .map(each -> "; usually takes off " + display.money(each.low()) + " to " + display.money(each.high()))
                .orElse("");
        return argument.label() + basis + off + ".";
    }

    private NativeDetails fair(BoatOffer.Offer offer) {
        UnorderedList parts = new UnorderedList();
        offer.fair()
                .parts()
                .forEach(part -> parts.add(new ListItem(part.label() + ": " + display.money(part.amount()))));
        return new NativeDetails(
                "How the usual price of " + display.money(offer.fair().amount()) + " comes about ("
                        + display.money(offer.fair().low()) + " to "
                        + display.money(offer.fair().high())
                        + " for most such boats)",
                parts);
    }
}
