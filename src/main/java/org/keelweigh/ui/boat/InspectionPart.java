package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Inspection;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.NextCheck;
import org.keelweigh.condition.Zone;

/** The inspection: every check that applies, one tap each; a tap changes only what it moved. */
final class InspectionPart extends BoatPart {

    private static final String PRESSED = "aria-pressed";

    private final InspectionSummary summary;
    private final HistoriesPart histories;
    private final SignsPart signs;
    private final Select<Method> method = new Select<>();
    private final NativeButton byZone = new NativeButton("By zone", click -> order(false));
    private final NativeButton byWorth = new NativeButton("By worth per minute", click -> order(true));
    private final Div checks = Plain.row("kw-stack");
    private final Map<String, CheckRow> rows = new LinkedHashMap<>();
    private final Map<Zone, Span> counts = new LinkedHashMap<>();
    private transient List<Check> shown = List.of();
    private boolean worthFirst;

    InspectionPart(BoatDesk desk) {
        super(desk);
        summary = new InspectionSummary(desk);
        histories = new HistoriesPart(desk);
        signs = new SignsPart(desk);
        method.setLabel("How you are looking now");
        method.setItems(Method.values());
        method.setItemLabelGenerator(each -> Plain.capital(each.label()));
        method.setValue(Method.TOUCHED);
        method.setTestId("inspection-method");
        byZone.setTestId("order-zone");
        byWorth.setTestId("order-worth");
        Div order = Plain.row("kw-boat-taps", byZone, byWorth);
        order.getElement().setAttribute("role", "group").setAttribute("aria-label", "Order of the checks");
        Div controls = Plain.row("kw-row", method, order);
        controls.addClassName("kw-boat-controls");
        add(summary, histories, controls, checks, signs);
        refresh();
    }

    @Override
    void refresh() {
        Inspection inspection = inspection();
        List<Check> all =
                desk().catalogues().inspection().applicable(desk().report().boat());
        if (!all.equals(shown)) {
            shown = all;
            rows.clear();
            all.forEach(check -> rows.put(check.id(), new CheckRow(desk(), check, method::getValue)));
            arrange();
        }
        rows.values().forEach(CheckRow::refresh);
        counts.forEach((zone, count) -> count.setText(progress(zone, inspection)));
        summary.refresh();
        histories.refresh();
        signs.refresh();
    }

    private void order(boolean byWorthNow) {
        worthFirst = byWorthNow;
        arrange();
        Inspection inspection = inspection();
        counts.forEach((zone, count) -> count.setText(progress(zone, inspection)));
    }

    /** Moves the rows; they are the same ones, so that what somebody typed in them stays. */
    private void arrange() {
        byZone.getElement().setAttribute(PRESSED, String.valueOf(!worthFirst));
        byWorth.getElement().setAttribute(PRESSED, String.valueOf(worthFirst));
        checks.removeAll();
        counts.clear();
        if (worthFirst) {
            byWorth();
        } else {
            byZone();
        }
    }

    private void byZone() {
        Map<Zone, List<Check>> zones = new LinkedHashMap<>();
        shown.forEach(each ->
                zones.computeIfAbsent(each.zone(), key -> new ArrayList<>()).add(each));
        zones.forEach((zone, members) -> {
            Span count = new Span();
            count.addClassName("kw-soft");
            counts.put(zone, count);
            Section section = new Section(Plain.row("kw-row", new H3(Plain.capital(zone.label())), count));
            section.addClassName("kw-sheet");
            members.forEach(each -> section.add(rows.get(each.id())));
            checks.add(section);
        });
    }

    private void byWorth() {
        List<String> order = desk().report().condition().nextChecks().stream()
                .map(NextCheck::check)
                .map(Check::id)
                .toList();
        Section section = Plain.sheet(
                "What is worth most for each minute, first",
                Plain.soft(
                        "Checks that need water come last: they cost a trip. What is made already stands at the end."));
        shown.stream()
                .sorted(Comparator.comparingInt(
                        check -> order.contains(check.id()) ? order.indexOf(check.id()) : order.size()))
                .forEach(each -> section.add(rows.get(each.id())));
        checks.add(section);
    }

    private String progress(Zone zone, Inspection inspection) {
        List<Check> own = inspection.applicable().stream()
                .filter(each -> each.zone() == zone)
                .toList();
        long made = own.stream()
                .filter(each -> inspection.finding(each).isPresent())
                .count();
        return made + " of " + own.size() + " made";
    }

    private Inspection inspection() {
        return Inspection.of(
                desk().catalogues().inspection(),
                desk().report().boat(),
                desk().data().findings());
    }
}
