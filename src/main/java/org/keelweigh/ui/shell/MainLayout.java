package org.keelweigh.ui.shell;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasComponents;
import com.vaadin.flow.component.HasElement;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Footer;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.AfterNavigationEvent;
import com.vaadin.flow.router.AfterNavigationObserver;
import com.vaadin.flow.router.Layout;
import com.vaadin.flow.router.RouterLayout;
import com.vaadin.flow.router.RouterLink;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.ui.shortlists.ShortlistsView;

/** The frame around every page: the name, where one is, and the way to the other pages of the shortlist. */
@Layout
@Tag("div")
public class MainLayout extends Component implements RouterLayout, HasComponents, AfterNavigationObserver {

    private static final String CURRENT = "aria-current";

    private final Nav nav = new Nav();
    private final Div place = new Div();
    private final Main main = new Main();

    /** Makes the frame. */
    public MainLayout() {
        getElement().getClassList().add("kw-frame");
        Anchor skip = new Anchor("#content", "Skip to the content");
        skip.addClassName("kw-skip");
        RouterLink home = new RouterLink(ShortlistsView.class);
        home.addClassName("kw-home");
        Span keel = new Span("Keel");
        Span weigh = new Span("weigh");
        weigh.addClassName("kw-home-second");
        home.add(keel, weigh);
        place.addClassName("kw-place");
        nav.addClassName("kw-nav");
        nav.getElement().setAttribute("aria-label", "Pages of this shortlist");
        Header header = new Header(home, place, nav);
        header.addClassName("kw-header");
        main.setId("content");
        main.getElement().setAttribute("tabindex", "-1");
        Footer footer = new Footer(
                new Span(
                        "Estimates, not promises. Follow the plates and manuals of boat, car, rack and cart, and your local law."));
        Anchor settings = new Anchor("settings", "Settings");
        settings.setRouterIgnore(false);
        footer.add(new Span(" "), settings);
        footer.addClassName("kw-footer");
        add(skip, header, main, footer);
    }

    @Override
    public void showRouterLayoutContent(HasElement content) {
        main.getElement().removeAllChildren();
        main.getElement().appendChild(content.getElement());
    }

    @Override
    public void afterNavigation(AfterNavigationEvent event) {
        if (event.getLocation().getFirstSegment().isEmpty()) {
            place.removeAll();
            nav.removeAll();
        } else {
            getUI().ifPresent(ui -> ui.getInternals().getActiveRouterTargetsChain().stream()
                    .filter(ShortlistPage.class::isInstance)
                    .map(ShortlistPage.class::cast)
                    .findFirst()
                    .flatMap(ShortlistPage::facts)
                    .ifPresent(facts -> showPlace(facts, event.getLocation().getPath())));
        }
    }

    /** Shows which shortlist the page belongs to and the way to its other pages. */
    private void showPlace(Facts facts, String path) {
        ShortlistId id = facts.shortlist().id();
        place.removeAll();
        place.add(new Span(facts.shortlist().data().name()));
        nav.removeAll();
        nav.add(
                link("Compare", Places.compare(id), path), link("Trip and people", Places.trip(id), path),
                link("Weigh", Places.weigh(id), path), link("Offer", Places.offer(id), path));
    }

    private static Anchor link(String text, String target, String path) {
        Anchor link = new Anchor(target, text);
        link.setRouterIgnore(false);
        if (target.equals(path)) {
            link.getElement().setAttribute(CURRENT, "page");
        }
        return link;
    }
}
