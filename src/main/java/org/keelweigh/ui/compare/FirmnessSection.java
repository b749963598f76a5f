package org.keelweigh.ui.compare;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import java.util.stream.Collectors;
import org.keelweigh.appraisal.CatchUp;
import org.keelweigh.appraisal.SecondOpinions;
import org.keelweigh.shortlist.Display;

/** How firmly the answer stands: the smallest change of weights for each rival, and what other methods say. */
class FirmnessSection extends Fold implements Part {

    private final UnorderedList rivals = new UnorderedList();
    private final Div voices = new Div();

    FirmnessSection() {
        super("How firmly it stands");
        rivals.setId("rivals");
        voices.setId("second-opinions");
        put(new H3("The smallest change of weights that would put another boat first"), rivals);
        put(new H3("Second opinions by other methods"), voices);
    }

    @Override
    public void show(Glance glance) {
        rivals.removeAll();
        List<CatchUp> chances = CatchUp.of(glance.measured(), glance.perspective());
        chances.forEach(each -> rivals.add(new ListItem(each.sentence())));
        if (chances.isEmpty()) {
            rivals.add(new ListItem("There is no rival left to come first."));
        }
        voices.removeAll();
        List<SecondOpinions.Voice> all = SecondOpinions.of(glance.measured(), glance.perspective());
        all.forEach(each -> voices.add(told(glance, each)));
        voices.add(
                new Paragraph(
                        all.isEmpty()
                                ? "Other methods need two boats that are not ruled out."
                                : "These methods can reorder boats when one joins the list, so they are asked but do not decide."));
    }

    private static Div told(Glance glance, SecondOpinions.Voice voice) {
        Span tag = new Span(voice.sameLeader() ? "agrees" : "differs");
        tag.addClassName("kw-tag");
        tag.getElement().setAttribute("data-tone", voice.sameLeader() ? "good" : "warn");
        String order = voice.order().stream().map(glance::name).collect(Collectors.joining(", "));
        String agreement = voice.agreement().isPresent()
                ? " Agreement of the two orders (Kendall's tau-b, from −1 to 1): "
                        + Display.number(voice.agreement().getAsDouble(), 2) + "."
                : "";
        return new Div(
                new Paragraph(new Span(voice.method() + " "), tag),
                new Paragraph(voice.sentence()),
                new NativeDetails(
                        "How it looks at them", new Paragraph(voice.how() + " Its order: " + order + "." + agreement)));
    }
}
