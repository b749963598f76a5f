package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Section;
import java.util.List;
import org.keelweigh.condition.BoatHistory;

/** What the findings together tell about the boat's past, as sentences. */
final class HistoriesPart extends Section {

    private final transient BoatDesk desk;
    private final Div told = new Div();
    private transient List<String> shown = List.of("");

    HistoriesPart(BoatDesk desk) {
        this.desk = desk;
        addClassName("kw-sheet");
        told.setTestId("histories");
        told.getElement().setAttribute("aria-live", "polite");
        add(new H3("What its past seems to be"), told);
    }

    void refresh() {
        List<String> now = desk.report().histories().stream()
                .map(BoatHistory::sentence)
                .map(Plain::capital)
                .toList();
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        told.removeAll();
        told.add(
                now.isEmpty()
                        ? Plain.soft(
                                "Nothing seen so far points to one history. Findings and the signs at the end of this page can.")
                        : Plain.list(now));
    }
}
