package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.Zone;

/** The checks of one zone, folded behind how many of them are made. Once on the page it stays open or shut as people leave it. */
final class ZoneFold extends NativeDetails {

    private final transient Zone zone;
    private final transient List<Check> checks;
    private final Span count = new Span();
    private final Anchor link;

    ZoneFold(Zone zone, List<Check> checks, List<CheckRow> rows) {
        this.zone = zone;
        this.checks = checks;
        addClassNames("kw-sheet", "kw-boat-zone");
        setId("zone-" + zone.code());
        setTestId("zone-" + zone.code());
        count.addClassName("kw-soft");
        setSummary(new H3(Plain.capital(zone.label())), count);
        setContent(new Div(rows.toArray(CheckRow[]::new)));
        link = new Anchor("#zone-" + zone.code(), "");
        link.getElement().setAttribute("router-ignore", true);
        link.getElement().addEventListener("click", event -> jump()).preventDefault();
    }

    /** Tells the link that jumps here. */
    Anchor link() {
        return link;
    }

    /** Shows how many checks are made, and answers whether any is left. */
    boolean refresh(BoatDesk desk) {
        List<Outcome> found = checks.stream()
                .flatMap(each -> desk.finding(each.id()).stream())
                .map(Finding::outcome)
                .toList();
        long made = found.stream().filter(each -> each != Outcome.NOT_FITTED).count();
        long applicable = checks.size() - (found.size() - made);
        count.setText(made + " of " + applicable + " made");
        link.setText(Plain.capital(zone.label()) + " " + made + " of " + applicable);
        return made < applicable;
    }

    private void jump() {
        setOpen(true);
        getElement()
                .executeJs("requestAnimationFrame(() => { this.scrollIntoView({block: 'start'});"
                        + " this.querySelector('summary').focus({preventScroll: true}); })");
    }
}
