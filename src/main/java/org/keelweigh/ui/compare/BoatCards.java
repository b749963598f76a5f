package org.keelweigh.ui.compare;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.appraisal.Measure;
import org.keelweigh.appraisal.Ruling;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.shell.Places;

/** A card for each boat, in order: what fits on a phone in the seller's driveway. */
class BoatCards extends Section implements Part {

    private final OrderedList list = new OrderedList();

    BoatCards() {
        addClassName("kw-cards");
        setId("cards");
        add(new H2("The boats in order"), list);
    }

    @Override
    public void show(Glance glance) {
        list.removeAll();
        glance.order().forEach(place -> list.add(card(glance, place)));
    }

    private static ListItem card(Glance glance, int place) {
        BoatReport boat = glance.boat(place);
        Display display = glance.display();
        Anchor name = new Anchor(Places.boat(glance.shortlist(), boat.id(), "facts"), boat.name());
        H3 heading = new H3(name);
        Paragraph verdict = new Paragraph(verdict(glance, place));
        DescriptionList figures = new DescriptionList();
        int risk = glance.measured().yardsticks().column(Measure.WALK_RISK);
        pair(
                figures,
                "Price",
                display.money(boat.price().value()) + (boat.price().isAssumed() ? " (assumed)" : ""));
        pair(
                figures,
                glance.measured().situation().horizonYears() + "-year cost",
                display.money(boat.cost().presentValue()));
        pair(
                figures,
                "To the water",
                display.mass(boat.cart().massKg()) + ", "
                        + boat.cart().verdict().label());
        pair(
                figures,
                "Chance of a dud",
                display.percent(boat.measures().getFirst().get(risk)));
        ListItem card = new ListItem(heading, verdict, figures);
        card.addClassName("kw-sheet");
        return card;
    }

    private static String verdict(Glance glance, int place) {
        return glance.boat(place)
                .ruledOutBy()
                .map(Ruling::reason)
                .map(reason -> "Ruled out: " + reason)
                .orElseGet(() -> "Number " + glance.perspective().ranking().rank(place) + ", "
                        + Display.number(glance.perspective().ranking().total(place), 0) + " of 100 points.");
    }

    private static void pair(DescriptionList figures, String label, String value) {
        Div group = new Div(new DescriptionList.Term(label), new DescriptionList.Description(value));
        figures.getElement().appendChild(group.getElement());
    }
}
