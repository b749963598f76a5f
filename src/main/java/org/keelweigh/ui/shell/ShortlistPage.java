package org.keelweigh.ui.shell;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.DetachEvent;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.RouteParameters;
import com.vaadin.flow.router.RouterLink;
import com.vaadin.flow.shared.Registration;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.FactsChanged;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.ui.shortlists.ShortlistsView;

/**
 * A page about one shortlist: finds it by the address, shows it, and shows it anew when somebody changes its facts. What is
 * selected stands in the address alone.
 */
public abstract class ShortlistPage extends Section implements BeforeEnterObserver, HasDynamicTitle {

    private final transient ShortlistEditing editing;
    private final transient FactsFeed feed;
    private String title = "Keelweigh";
    private @Nullable ShortlistId shortlist;
    private @Nullable Registration news;

    /** Makes the page empty; {@link #show} fills it. */
    protected ShortlistPage(ShortlistEditing editing, FactsFeed feed) {
        this.editing = editing;
        this.feed = feed;
        addClassName("kw-page");
    }

    /** Shows the facts, replacing what was shown. */
    protected abstract void show(Facts facts);

    /** Tells the page's name for the browser's title, such as "Compare". */
    protected abstract String pageName();

    /** Reads further route parameters before {@link #show}; pages that have some override it. */
    protected void read(RouteParameters parameters) {}

    /**
     * Hears that facts have changed while the page is open, by whomever; by default the page is shown anew. A page with
     * fields that somebody may be typing in overrides it.
     */
    protected void changed(Facts facts, FactsChanged change) {
        show(facts);
    }

    /** Tells the service that edits shortlists. */
    protected final ShortlistEditing editing() {
        return editing;
    }

    /** Reads the facts as they are now. */
    protected final Optional<Facts> facts() {
        return Optional.ofNullable(shortlist).flatMap(editing::facts);
    }

    @Override
    public final void beforeEnter(BeforeEnterEvent event) {
        RouteParameters parameters = event.getRouteParameters();
        shortlist = id(parameters, Places.SHORTLIST).map(ShortlistId::new).orElse(null);
        read(parameters);
        facts().ifPresentOrElse(this::enter, this::showMissing);
    }

    @Override
    public String getPageTitle() {
        return title;
    }

    /** Reads an identifier from the address; empty if there is none or it is no identifier. */
    protected static Optional<UUID> id(RouteParameters parameters, String name) {
        try {
            return parameters.get(name).map(UUID::fromString);
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Reads a boat's identifier from the address. */
    protected static Optional<CandidateId> boatId(RouteParameters parameters) {
        return id(parameters, Places.BOAT).map(CandidateId::new);
    }

    private void enter(Facts facts) {
        title = pageName() + " · " + facts.shortlist().data().name() + " · Keelweigh";
        show(facts);
    }

    private void showMissing() {
        title = "Not found · Keelweigh";
        removeAll();
        add(
                new H1("There is no such shortlist"),
                new Paragraph("It may have been deleted, or the address is not complete."),
                new Div(new RouterLink("See all shortlists", ShortlistsView.class)));
    }

    @Override
    protected void onAttach(AttachEvent event) {
        UI ui = event.getUI();
        if (shortlist != null) {
            news = feed.listen(shortlist, change -> ui.access(() -> facts().ifPresent(now -> changed(now, change))));
        }
    }

    @Override
    protected void onDetach(DetachEvent event) {
        if (news != null) {
            news.remove();
            news = null;
        }
    }
}
