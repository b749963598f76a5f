package org.keelweigh.ui.compare;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import java.util.function.Consumer;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.appraisal.SideBySide;
import org.keelweigh.ui.shell.Places;

/** Boats across, measures down. */
class SideBySideSection extends Fold implements Part {

    private final NativeTable table = new NativeTable();
    private final transient Consumer<BoatReport> remove;
    private transient List<?> shown = List.of();

    SideBySideSection(Consumer<BoatReport> remove) {
        super("Side by side");
        this.remove = remove;
        table.setId("side-by-side");
        table.setCaptionText(
                "What was measured or assumed, with its unit; best and worst are among boats not ruled out");
        Div frame = new Div(table);
        frame.addClassNames("kw-table-scroll", "kw-side");
        frame.getElement()
                .setAttribute("tabindex", "0")
                .setAttribute("role", "region")
                .setAttribute("aria-label", "Side by side, boats across");
        put(frame);
    }

    @Override
    public void show(Glance glance) {
        List<SideBySide.Row> rows = SideBySide.of(glance.measured(), glance.perspective());
        List<?> now = List.of(glance.order(), glance.measured().boats(), rows);
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        table.removeHead();
        table.removeBody();
        table.getHead().add(head(glance));
        rows.forEach(row -> table.getBody().add(row(glance, row)));
    }

    private NativeTableRow head(Glance glance) {
        NativeTableRow head = new NativeTableRow(heading("col", new Span("Measure")));
        glance.order().forEach(place -> head.add(heading("col", boat(glance, place))));
        return head;
    }

    private Div boat(Glance glance, int place) {
        BoatReport report = glance.boat(place);
        Anchor name = new Anchor(Places.boat(glance.shortlist(), report.id(), "facts"), report.name());
        Div cell = new Div(name);
        if (report.ruledOut()) {
            Span tag = new Span("ruled out");
            tag.addClassName("kw-tag");
            tag.getElement().setAttribute("data-tone", "bad");
            cell.add(tag);
        }
        Button button = new Button("Remove", click -> remove.accept(report));
        button.setAriaLabel("Remove " + report.name());
        button.addThemeName("tertiary");
        button.addClassName("kw-quiet");
        button.setTestId("remove-" + report.id());
        cell.add(button);
        return cell;
    }

    private static NativeTableRow row(Glance glance, SideBySide.Row row) {
        Span label = new Span(row.label());
        Span family = new Span(row.family().label());
        family.addClassName("kw-soft");
        NativeTableHeaderCell heading = heading("row", new Div(label), new Div(family));
        if (!row.meaning().isBlank()) {
            heading.getElement().setAttribute("title", row.meaning());
        }
        NativeTableRow cells = new NativeTableRow(heading);
        glance.order().forEach(place -> cells.add(cell(row.cells().get(place))));
        return cells;
    }

    private static NativeTableCell cell(SideBySide.Cell cell) {
        Span text = new Span(cell.text());
        NativeTableCell shown = new NativeTableCell(text);
        if (cell.assumed()) {
            text.addClassName("kw-assumed");
            shown.add(note("assumed", ""));
        }
        if (cell.mark() == SideBySide.Mark.BEST || cell.mark() == SideBySide.Mark.WORST) {
            shown.add(note(cell.mark().words(), cell.mark() == SideBySide.Mark.BEST ? "good" : "warn"));
        } else if (cell.mark() == SideBySide.Mark.ALIKE) {
            shown.add(note(cell.mark().words(), ""));
        }
        return shown;
    }

    private static Span note(String words, String tone) {
        Span note = new Span(words);
        note.addClassName("kw-tag");
        note.getElement().setAttribute("data-tone", tone);
        return note;
    }

    private static NativeTableHeaderCell heading(String scope, Component... content) {
        NativeTableHeaderCell cell = new NativeTableHeaderCell(content);
        cell.getElement().setAttribute("scope", scope);
        return cell;
    }
}
