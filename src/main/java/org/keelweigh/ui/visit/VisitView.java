package org.keelweigh.ui.visit;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouteParameters;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.FactsChanged;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.ui.shell.FactsFeed;
import org.keelweigh.ui.shell.Places;
import org.keelweigh.ui.shell.ShortlistPage;

/** The visit to a boat: prepare, walk round it one check a screen, and see what came of it. Made for a phone in one hand. */
@Route(Places.VISIT)
@StyleSheet("css/visit.css")
@StyleSheet("css/photos.css")
public class VisitView extends ShortlistPage {

    private final transient VisitServices services;
    private final StandingLine standing = new StandingLine();
    private final Div steps = new Div();
    private final Div stage = new Div();
    private @Nullable CandidateId boat;
    private transient @Nullable VisitDesk desk;
    private VisitStep step = VisitStep.PREPARE;

    VisitView(ShortlistEditing editing, FactsFeed feed, VisitServices services) {
        super(editing, feed);
        this.services = services;
        addClassName("kw-visit");
        steps.addClassName("kw-visit-steps");
        steps.getElement().setAttribute("role", "group");
        steps.getElement().setAttribute("aria-label", "Parts of the visit");
    }

    @Override
    protected String pageName() {
        return "Visit";
    }

    @Override
    protected void read(RouteParameters parameters) {
        boat = boatId(parameters).orElse(null);
    }

    @Override
    protected void show(Facts facts) {
        removeAll();
        Optional.ofNullable(boat).flatMap(facts::candidate).ifPresentOrElse(found -> open(facts, found.id()), () -> {
            add(
                    new H1("There is no such boat"),
                    new Paragraph("It may have been deleted, or the address is not complete."),
                    new Div(new Anchor(Places.compare(facts.shortlist().id()), "See the boats of this shortlist")));
        });
    }

    @Override
    protected void changed(Facts facts, FactsChanged change) {
        if (desk == null || boat == null || facts.candidate(boat).isEmpty()) {
            show(facts);
            return;
        }
        if (desk.hear(facts)) {
            refresh(desk);
        }
    }

    private void refresh(VisitDesk opened) {
        standing.show(opened.standing());
        stage.getChildren()
                .filter(VisitPanel.class::isInstance)
                .map(VisitPanel.class::cast)
                .forEach(VisitPanel::refresh);
    }

    private void open(Facts facts, CandidateId id) {
        VisitDesk opened = new VisitDesk(services, facts, id);
        desk = opened;
        opened.onChange(() -> refresh(opened));
        standing.show(opened.standing());
        add(new H1("Visit: " + opened.name()), standing, steps, stage);
        go(opened, opened.notes().startedAt() == null ? VisitStep.PREPARE : VisitStep.WALK);
    }

    private void go(VisitDesk opened, VisitStep to) {
        step = to;
        steps.removeAll();
        Arrays.stream(VisitStep.values()).forEach(each -> steps.add(stepButton(opened, each)));
        stage.removeAll();
        stage.add(panel(opened, to));
    }

    private Component panel(VisitDesk opened, VisitStep to) {
        return switch (to) {
            case PREPARE -> new PreparePanel(opened, () -> go(opened, VisitStep.WALK));
            case WALK -> new WalkPanel(opened, () -> go(opened, VisitStep.FINISH));
            case FINISH -> new FinishPanel(opened);
        };
    }

    private Button stepButton(VisitDesk opened, VisitStep to) {
        Button button = new Button(to.label(), click -> go(opened, to));
        button.setTestId("step-" + to.name().toLowerCase(Locale.ROOT));
        button.getElement().setAttribute("aria-pressed", String.valueOf(to == step));
        return button;
    }
}
