package org.keelweigh.ui.weigh;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.ArrayList;
import java.util.List;
import org.keelweigh.appraisal.Disagreement;
import org.keelweigh.appraisal.Measured;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.format.FoldingTable;

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
        List<String> columns = new ArrayList<>(List.of("Criterion"));
        deciders.forEach(each -> columns.add(each.name()));
        columns.addAll(List.of("Boats lie apart", "Can move"));
        return FoldingTable.of(
                "Share of the weight, and what the difference can move",
                columns,
                differences.stream().map(this::row).toList(),
                1);
    }

    private List<String> row(Disagreement each) {
        List<String> cells = new ArrayList<>(List.of(yardstick(each).name()));
        each.shares().forEach(share -> cells.add(percent(share)));
        cells.add(Display.number(each.spread(), 0) + " of 100 points");
        cells.add(Display.number(each.points(), 1) + " points");
        return cells;
    }

    private Yardstick yardstick(Disagreement each) {
        return measured.yardsticks().all().get(each.criterion());
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
