package org.keelweigh.ui.compare;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.AfterNavigationEvent;
import com.vaadin.flow.router.AfterNavigationObserver;
import com.vaadin.flow.router.Location;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.keelweigh.appraisal.AppraisalService;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.FactsChanged;
import org.keelweigh.shortlist.PersonId;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.ui.shell.Background;
import org.keelweigh.ui.shell.FactsFeed;
import org.keelweigh.ui.shell.Places;
import org.keelweigh.ui.shell.ShortlistPage;
import org.keelweigh.ui.shell.Visitor;

/** The dashboard of a shortlist: which boat, why, and what would change it. */
@Route(Places.COMPARE)
@StyleSheet("css/compare.css")
public class CompareView extends ShortlistPage implements AfterNavigationObserver {

    private static final int FEWEST_TO_COMPARE = 2;
    private static final String AS = "as";

    private final transient AppraisalService appraisal;
    private final transient Background background;
    private @Nullable Dashboard dashboard;
    private transient @Nullable Display display;

    CompareView(ShortlistEditing editing, FactsFeed feed, AppraisalService appraisal, Background background) {
        super(editing, feed);
        this.appraisal = appraisal;
        this.background = background;
        addClassName("kw-compare");
    }

    @Override
    protected String pageName() {
        return "Compare";
    }

    @Override
    protected void show(Facts facts) {
        removeAll();
        add(new H1(facts.shortlist().data().name()));
        display = Display.of(facts.shortlist());
        if (facts.candidates().size() < FEWEST_TO_COMPARE) {
            dashboard = null;
            add(new EmptyCompare(facts, this::addBoat));
        } else {
            Dashboard fresh = new Dashboard(appraisal, editing(), background, facts, this::addBoat, this::chosen);
            dashboard = fresh;
            add(fresh);
        }
    }

    /** Keeps what is open, typed and tried, unless there is something else to show or other units to show it in. */
    @Override
    protected void changed(Facts facts, FactsChanged change) {
        boolean same = Display.of(facts.shortlist()).equals(display);
        if (dashboard != null && same && facts.candidates().size() >= FEWEST_TO_COMPARE) {
            dashboard.update(facts);
        } else {
            show(facts);
        }
    }

    @Override
    public void afterNavigation(AfterNavigationEvent event) {
        if (dashboard != null) {
            dashboard.look(person(event.getLocation().getQueryParameters()));
        }
    }

    private static Optional<PersonId> person(QueryParameters parameters) {
        try {
            return parameters.getSingleParameter(AS).map(UUID::fromString).map(PersonId::new);
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Puts into the address through whose eyes one looks. */
    private void chosen(ShortlistId shortlist, Optional<PersonId> person) {
        QueryParameters parameters =
                person.map(each -> QueryParameters.of(AS, each.toString())).orElseGet(QueryParameters::empty);
        UI.getCurrent().getPage().getHistory().replaceState(null, new Location(Places.compare(shortlist), parameters));
    }

    private void addBoat(CandidateData data) {
        facts().map(facts -> facts.shortlist().id()).ifPresent(shortlist -> {
            Candidate added = editing().add(shortlist, data, Visitor.name());
            UI.getCurrent().navigate(Places.boat(shortlist, added.id(), "facts"));
        });
    }
}
