package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H4;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.keelweigh.boat.Boat;
import org.keelweigh.condition.CauseSignal;
import org.keelweigh.condition.HiddenCause;
import org.keelweigh.condition.HiddenCauses;

/** The signs of hidden causes that can be looked for, cause by cause. */
final class SignsPart extends Section {

    private final transient BoatDesk desk;
    private final Div groups = Plain.row("kw-columns");
    private final List<YesNo> signs = new ArrayList<>();
    private transient List<CauseSignal> shown = List.of();

    SignsPart(BoatDesk desk) {
        this.desk = desk;
        Section sheet = Plain.sheet(
                "Signs that tell its past",
                Plain.soft(
                        "Each makes one history likelier or less likely, and with it the faults nobody has looked for."),
                groups);
        add(sheet);
    }

    /** Shows the answers that were just saved. */
    void saved() {
        signs.forEach(YesNo::refresh);
    }

    void refresh() {
        Boat boat = desk.report().boat();
        List<CauseSignal> now = desk.catalogues().causes().signals(boat);
        if (!now.equals(shown)) {
            shown = now;
            build();
        }
        saved();
    }

    private void build() {
        groups.removeAll();
        signs.clear();
        HiddenCauses causes = desk.catalogues().causes();
        Map<String, List<CauseSignal>> byCause = new LinkedHashMap<>();
        shown.forEach(each ->
                byCause.computeIfAbsent(each.cause(), key -> new ArrayList<>()).add(each));
        byCause.forEach((cause, members) -> {
            Div group = new Div();
            members.forEach(each -> {
                YesNo sign = new YesNo(desk, each.id(), each.phrase());
                signs.add(sign);
                group.add(sign);
            });
            NativeDetails fold = new NativeDetails();
            fold.setSummary(
                    new H4(Plain.capital(
                            causes.cause(cause).map(HiddenCause::label).orElse(cause))),
                    new Span(members.size() == 1 ? "1 sign" : members.size() + " signs"));
            fold.setContent(group);
            groups.add(fold);
        });
    }
}
