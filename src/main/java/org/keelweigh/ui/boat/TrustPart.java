package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H4;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.keelweigh.condition.ListingAssessment;
import org.keelweigh.condition.ListingCatalogue.Advice;
import org.keelweigh.condition.ListingSignal;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.format.FoldingTable;

/** How far the hull number, the listing and its seller can be relied on. */
final class TrustPart extends BoatPart {

    private static final Map<String, String> GROUPS = Map.of(
            "account", "The seller's account",
            "identity", "Papers and identity",
            "item", "The boat itself",
            "payment", "Meeting and paying",
            "photo", "The pictures");

    private final HullNumberPart number;
    private final Div verdict = new Div();
    private final List<YesNo> signs = new ArrayList<>();

    TrustPart(BoatDesk desk) {
        super(desk);
        number = new HullNumberPart(desk);
        verdict.setTestId("listing-verdict");
        verdict.getElement().setAttribute("aria-live", "polite");
        add(number, Plain.sheet("Listing and seller", verdict, signs()), advice());
        refresh();
    }

    @Override
    void saved() {
        signs.forEach(YesNo::refresh);
    }

    @Override
    void refresh() {
        number.refresh();
        saved();
        ListingAssessment listing = desk().report().trust().listing();
        Display display = desk().display();
        verdict.removeAll();
        verdict.add(new Paragraph(listing.sentence()));
        listing.priceShare()
                .ifPresent(share -> verdict.add(Plain.soft(
                        "The asking price is " + display.percent(share) + " of what such a boat usually goes for, "
                                + display.money(desk().report().fair().amount()) + ".")));
        listing.bestProof()
                .ifPresent(proof -> verdict.add(new Paragraph("Best proof: "
                        + proof.signal().proof().orElse(proof.signal().phrase())
                        + ". It would bring the chance of fraud or theft to "
                        + display.percent(proof.concernAfter()) + ".")));
        if (!listing.reasons().isEmpty()) {
            verdict.add(Plain.details("What counted, and how much", reasons(listing)));
        }
    }

    private Div reasons(ListingAssessment listing) {
        return FoldingTable.of(
                "Weight of evidence: how many times as likely fraud or theft is, given the sign",
                List.of("sign", "fraud", "stolen", "what would settle it"),
                listing.reasons().stream()
                        .map(each -> List.of(
                                Plain.capital(each.signal().phrase()),
                                times(each.fraudWeight()),
                                times(each.stolenWeight()),
                                each.signal().settle().orElse("–")))
                        .toList(),
                4);
    }

    private static String times(double weight) {
        return "× " + Display.number(Math.exp(weight), Math.exp(weight) < 10 ? 1 : 0);
    }

    private Div signs() {
        Map<String, List<ListingSignal>> groups = new LinkedHashMap<>();
        desk().catalogues().listing().signalsToAsk().forEach(each -> groups.computeIfAbsent(
                        each.group(), key -> new ArrayList<>())
                .add(each));
        Div all = Plain.row("kw-columns");
        groups.forEach((group, members) -> {
            Div column = new Div(new H4(GROUPS.getOrDefault(group, Plain.capital(group))));
            for (ListingSignal each : members) {
                YesNo sign = new YesNo(desk(), each.id(), each.phrase());
                signs.add(sign);
                column.add(sign);
            }
            all.add(column);
        });
        return all;
    }

    private Section advice() {
        List<Advice> all = desk().catalogues().listing().advice();
        return Plain.sheet(
                "Meeting and paying",
                Plain.row("kw-columns", advice("Meeting", all, "meet"), advice("Paying", all, "pay")));
    }

    private static Div advice(String heading, List<Advice> all, String topic) {
        return new Div(
                new H4(heading),
                Plain.list(all.stream()
                        .filter(each -> each.topic().equals(topic))
                        .map(Advice::text)
                        .toList()));
    }
}
