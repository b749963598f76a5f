package org.keelweigh.ui.compare;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import java.util.function.Consumer;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.ui.shell.Places;

/** What stands here before there are two boats to compare: how to get there, and the first step. */
class EmptyCompare extends Div {

    EmptyCompare(Facts facts, Consumer<CandidateData> add) {
        addClassNames("kw-sheet", "kw-empty");
        setId("empty");
        if (facts.candidates().isEmpty()) {
            add(new H2("Put your first boat on the list"));
            add(
                    new Paragraph(
                            "A name and a kind are enough to begin with. What you do not know is assumed from what is usual, and every assumption is marked where you read it."));
        } else {
            Candidate only = facts.candidates().getFirst();
            add(new H2("One boat is here; a second one makes it a comparison"));
            add(new Paragraph(new Anchor(
                    Places.boat(facts.shortlist().id(), only.id(), "facts"),
                    "See or correct what is known of " + only.data().name())));
        }
        add(new AddBoat(Display.of(facts.shortlist()), add));
        add(new H2("What then happens"));
        add(
                new OrderedList(
                        new ListItem("With two boats this page says which one leads, and why."),
                        new ListItem(
                                "Tell where you go and who lifts and pulls, and the answer becomes yours: see Trip and people."),
                        new ListItem(
                                "Look at the boats with the list of checks; each finding changes costs, risks and the price.")));
    }
}
