package org.keelweigh.ui.boat;

import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouteParameters;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.FactsChanged;
import org.keelweigh.ui.shell.FactsFeed;
import org.keelweigh.ui.shell.Places;
import org.keelweigh.ui.shell.ShortlistPage;

/** A boat's page. The address names the boat and the section shown. */
@Route(Places.BOAT_PAGE)
@StyleSheet("css/boat.css")
@StyleSheet("css/photos.css")
public class BoatView extends ShortlistPage {

    private final transient BoatDesk.Services services;
    private BoatSection section = BoatSection.FACTS;
    private transient Optional<CandidateId> boat = Optional.empty();
    private transient @Nullable BoatDesk desk;
    private @Nullable BoatPart part;

    BoatView(FactsFeed feed, BoatDesk.Services services) {
        super(services.editing(), feed);
        this.services = services;
        addClassName("kw-boat");
    }

    @Override
    protected void read(RouteParameters parameters) {
        boat = boatId(parameters);
        section = BoatSection.of(parameters.get("section").orElse(""));
    }

    @Override
    protected String pageName() {
        return section.label();
    }

    @Override
    protected void show(Facts facts) {
        removeAll();
        boat.filter(id -> facts.candidate(id).isPresent())
                .ifPresentOrElse(id -> showBoat(facts, id), () -> showMissing(facts));
    }

    @Override
    protected void changed(Facts facts, FactsChanged change) {
        if (desk == null) {
            show(facts);
        } else {
            desk.hear(facts, change.who());
            if (part != null) {
                part.saved();
            }
        }
    }

    private void showBoat(Facts facts, CandidateId id) {
        BoatDesk work = new BoatDesk(services, facts, id);
        desk = work;
        BoatHeader header = new BoatHeader(work, section);
        BoatPart made = section.make(work);
        part = made;
        made.setTestId("section-" + section.code());
        work.onChange(made::saved, () -> {
            header.refresh();
            made.refresh();
        });
        H2 heading = new H2(section.label());
        heading.addClassName("kw-boat-section");
        add(header, sections(facts, id), work.notices(), heading, made);
    }

    private Nav sections(Facts facts, CandidateId id) {
        Nav nav = new Nav();
        nav.addClassName("kw-boat-nav");
        nav.getElement().setAttribute("aria-label", "Sections of this boat's page");
        for (BoatSection each : BoatSection.values()) {
            Anchor link = new Anchor(Places.boat(facts.shortlist().id(), id, each.code()), each.label());
            link.setRouterIgnore(false);
            if (each == section) {
                link.getElement().setAttribute("aria-current", "page");
            }
            nav.add(link);
        }
        // on a phone the line of sections is longer than the screen
        nav.getElement()
                .executeJs("requestAnimationFrame(() => this.querySelector('[aria-current]')"
                        + ".scrollIntoView({block: 'nearest', inline: 'center'}))");
        return nav;
    }

    private void showMissing(Facts facts) {
        desk = null;
        add(
                new H1("There is no such boat on this shortlist"),
                new Paragraph("It may have been removed, or the address is not complete."),
                new Anchor(Places.compare(facts.shortlist().id()), "See the boats of this shortlist"));
    }
}
