package org.keelweigh.ui.weigh;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableBody;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import org.keelweigh.appraisal.Disagreement;
import org.keelweigh.appraisal.Measured;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.shortlist.Display;

/** Everybody's weights side by side, the differences that matter first. */
final class Revealed extends Section {

    private static final double MATTERS = 1;
    private static final int MOST_TOLD = 3;

    private final transient Measured measured;
    private final transient List<Perspective> deciders;

    Revealed(Scales scales, Runnable anew) {
        addClassName("kw-sheet");
        setTestId("revealed");
        measured = scales.measured();
        deciders = measured.situation().deciders().stream()
                .map(measured::perspective)
                .toList();
        List<Disagreement> differences = Disagreement.of(deciders);
        add(new H2("All are done: side by side"), leaders());
        add(new H3("Where you differ, and whether it matters here"), told(differences), table(differences));
        scales.me().ifPresent(me -> {
            Button again = new Button("Change my weights", click -> {
                scales.edit(data -> data.withWeighed(false));
                anew.run();
            });
            again.setTestId("weigh-again");
            add(again, soft("That hides everybody's weights again until all are done."));
        });
    }

    private UnorderedList leaders() {
        UnorderedList list = new UnorderedList();
        for (Perspective each : deciders) {
            var leader = each.ranking().leader();
            list.add(new ListItem(
                    leader.isEmpty()
                            ? "To " + each.name() + " no boat can be recommended yet."
                            : "To " + each.name() + ", "
                                    + measured.boats().get(leader.getAsInt()).name() + " comes first with "
                                    + Display.number(each.ranking().total(leader.getAsInt()), 0) + " of 100 points."));
        }
        return list;
    }

    private UnorderedList told(List<Disagreement> differences) {
        UnorderedList list = new UnorderedList();
        differences.stream()
                .filter(each -> each.points() >= MATTERS)
                .limit(MOST_TOLD)
                .forEach(each -> list.add(new ListItem(sentence(each))));
        if (list.getChildren().findAny().isEmpty()) {
            list.add(new ListItem(
                    "Nothing you weigh differently moves any boat by a whole point: there is nothing to argue about."));
        }
        return list;
    }

    private String sentence(Disagreement each) {
        int most = at(
                each,
                each.shares().stream().mapToDouble(Double::doubleValue).max().orElse(0));
        int least = at(
                each,
                each.shares().stream().mapToDouble(Double::doubleValue).min().orElse(0));
        return yardstick(each).name() + " counts " + percent(each.shares().get(most)) + " to "
                + deciders.get(most).name() + " and " + percent(each.shares().get(least)) + " to "
                + deciders.get(least).name() + ". As the boats lie " + Display.number(each.spread(), 0)
                + " points apart there, that can move one against another by up to " + Display.number(each.points(), 1)
                + " points.";
    }

    private static int at(Disagreement each, double share) {
        return each.shares().indexOf(share);
    }

    private Div table(List<Disagreement> differences) {
        NativeTable table = new NativeTable();
        table.setCaptionText("Share of the weight, and what the difference can move");
        NativeTableRow head = new NativeTableRow(heading("Criterion"));
        deciders.forEach(each -> head.add(heading(each.name())));
        head.add(heading("Boats lie apart"), heading("Can move"));
        table.getHead().add(head);
        NativeTableBody body = table.addBody();
        differences.forEach(each -> body.add(row(each)));
        Div scroll = new Div(table);
        scroll.addClassName("kw-table-scroll");
        scroll.getElement()
                .setAttribute("tabindex", "0")
                .setAttribute("role", "region")
                .setAttribute("aria-label", "Weights side by side");
        return scroll;
    }

    private NativeTableRow row(Disagreement each) {
        NativeTableHeaderCell name = heading(yardstick(each).name());
        name.getElement().setAttribute("scope", "row");
        NativeTableRow row = new NativeTableRow(name);
        each.shares().forEach(share -> row.add(cell(percent(share))));
        row.add(
                cell(Display.number(each.spread(), 0) + " of 100 points"),
                cell(Display.number(each.points(), 1) + " points"));
        return row;
    }

    private Yardstick yardstick(Disagreement each) {
        return measured.yardsticks().all().get(each.criterion());
    }

    private static NativeTableHeaderCell heading(String text) {
        NativeTableHeaderCell cell = new NativeTableHeaderCell(text);
        cell.getElement().setAttribute("scope", "col");
        return cell;
    }

    private static NativeTableCell cell(String text) {
        NativeTableCell cell = new NativeTableCell(text);
        cell.addClassName("kw-number");
        return cell;
    }

    private static Paragraph soft(String text) {
        Paragraph paragraph = new Paragraph(text);
        paragraph.addClassName("kw-soft");
        return paragraph;
    }

    private static String percent(double share) {
        return Display.number(100 * share, 0) + " %";
    }
}
