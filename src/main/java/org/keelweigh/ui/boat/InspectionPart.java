package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.NextCheck;
import org.keelweigh.condition.Zone;
import org.keelweigh.ui.shell.Downloads;

/** The inspection: every check that applies, one tap each; a tap changes only what it moved. */
final class InspectionPart extends BoatPart {

    private static final String PRESSED = "aria-pressed";
    private static final int FIRST_SHOWN = 10;

    private final InspectionSummary summary;
    private final HistoriesPart histories;
    private final SignsPart signs;
    private final Select<Method> method = new Select<>();
    private final NativeButton byZone = new NativeButton("By zone", click -> order(false));
    private final NativeButton byWorth = new NativeButton("By worth per minute", click -> order(true));
    private final Nav zones = new Nav();
    private final Div checks = Plain.row("kw-stack");
    private final Map<String, CheckRow> rows = new LinkedHashMap<>();
    private final List<ZoneFold> folds = new ArrayList<>();
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
        Anchor sheet = Downloads.link(
                "Field sheet to take along (works without a network, prints)",
                Downloads.fileName("field-sheet", desk.data().name(), "html"),
                "text/html;charset=utf-8",
                desk::fieldSheet);
        sheet.setTestId("field-sheet");
        zones.addClassName("kw-boat-zones");
        zones.getElement().setAttribute("aria-label", "Zones of the boat");
        add(summary, histories, controls, sheet, zones, checks, signs);
        refresh();
    }

    @Override
    void saved() {
        rows.values().forEach(CheckRow::saved);
        folds.forEach(each -> each.refresh(desk()));
        signs.saved();
        busy(desk().working());
    }

    @Override
    void refresh() {
        List<Check> all =
                desk().catalogues().inspection().applicable(desk().report().boat());
        if (!all.equals(shown)) {
            shown = all;
            rows.clear();
            all.forEach(check -> rows.put(check.id(), new CheckRow(desk(), check, method::getValue)));
            arrange();
        }
        rows.values().forEach(CheckRow::refresh);
        folds.forEach(each -> each.refresh(desk()));
        summary.refresh();
        histories.refresh();
        signs.refresh();
        busy(desk().working());
    }

    /** Screen readers wait with the figures until they are those of the last tap. */
    private void busy(boolean working) {
        summary.getElement().setAttribute("aria-busy", String.valueOf(working));
    }

    private void order(boolean byWorthNow) {
        worthFirst = byWorthNow;
        arrange();
    }

    /** Moves the rows; they are the same ones, so that what somebody typed in them stays. */
    private void arrange() {
        byZone.getElement().setAttribute(PRESSED, String.valueOf(!worthFirst));
        byWorth.getElement().setAttribute(PRESSED, String.valueOf(worthFirst));
        checks.removeAll();
        zones.removeAll();
        folds.clear();
        zones.setVisible(!worthFirst);
        if (worthFirst) {
            byWorth();
        } else {
            byZone();
        }
    }

    private void byZone() {
        Map<Zone, List<Check>> members = new LinkedHashMap<>();
        shown.forEach(each ->
                members.computeIfAbsent(each.zone(), key -> new ArrayList<>()).add(each));
        members.forEach((zone, own) -> folds.add(new ZoneFold(zone, own, rowsOf(own))));
        folds.forEach(each -> {
            zones.add(each.link());
            checks.add(each);
        });
        List<ZoneFold> unfinished =
                folds.stream().filter(each -> each.refresh(desk())).toList();
        unfinished.stream().findFirst().ifPresent(each -> each.setOpen(true));
    }

    private void byWorth() {
        List<String> order = desk().report().condition().nextChecks().stream()
                .map(NextCheck::check)
                .map(Check::id)
                .toList();
        List<CheckRow> sorted = rowsOf(shown.stream()
                .sorted(Comparator.comparingInt(
                        check -> order.contains(check.id()) ? order.indexOf(check.id()) : order.size()))
                .toList());
        Section section = Plain.sheet(
                "What is worth most for each minute, first",
                Plain.soft(
                        "Checks that need water come last: they cost a trip. What is made already stands at the end."));
        sorted.stream().limit(FIRST_SHOWN).forEach(section::add);
        List<CheckRow> others = sorted.stream().skip(FIRST_SHOWN).toList();
        if (!others.isEmpty()) {
            section.add(showRest(section, others));
        }
        checks.add(section);
    }

    private static NativeButton showRest(Section section, List<CheckRow> others) {
        NativeButton show = new NativeButton("Show the rest: " + others.size() + " more checks");
        show.setTestId("show-rest");
        show.addClickListener(click -> {
            section.remove(show);
            others.forEach(section::add);
            others.getFirst().focusFirst();
        });
        return show;
    }

    private List<CheckRow> rowsOf(List<Check> some) {
        return some.stream().map(each -> rows.get(each.id())).toList();
    }
}
