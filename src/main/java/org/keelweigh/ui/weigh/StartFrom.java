package org.keelweigh.ui.weigh;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import java.util.TreeMap;
import org.keelweigh.appraisal.WeightSet;
import org.keelweigh.shortlist.PersonData;
import org.keelweigh.ui.pairs.PairDialog;
import org.keelweigh.ui.shell.Undo;

/** Ways to a first set of weights: one that suits people like you, an order, or answers about two at a time. */
final class StartFrom extends Section {

    StartFrom(Scales scales, Runnable anew) {
        addClassName("kw-sheet");
        Select<WeightSet> sets = new Select<>();
        sets.setLabel("Weights to start from");
        sets.setTestId("weight-set");
        sets.setItems(scales.yardsticks().weightSets());
        sets.setItemLabelGenerator(WeightSet::name);
        PersonData now = scales.me().orElseThrow().data();
        sets.setPlaceholder(now.weights().isEmpty() ? "First boat" : "your own");
        scales.yardsticks().weightSets().stream()
                .filter(each ->
                        each.id().equals(now.weightSet()) && now.weights().isEmpty())
                .findFirst()
                .ifPresent(sets::setValue);
        sets.addValueChangeListener(change -> {
            if (change.isFromClient() && change.getValue() != null) {
                replace(scales, anew, change.getValue());
            }
        });
        Div order = new Div(new OrderFirst(scales, anew));
        NativeDetails details = new NativeDetails("Or put them in order first", order);
        Paragraph soft = new Paragraph("A start to correct, not advice.");
        soft.addClassName("kw-soft");
        Button pairs = new Button("Or compare two at a time", click -> compare(scales, anew));
        pairs.setTestId("compare-pairs");
        add(new H2("1. A start"), sets, soft, details, new Div(pairs));
    }

    private static void compare(Scales scales, Runnable anew) {
        new PairDialog(
                        scales.yardsticks().all(),
                        scales.swings(),
                        scales.measured().situation().display(),
                        points -> scales.replace(new TreeMap<>(points), "The points follow your answers.", anew))
                .open();
    }

    private static void replace(Scales scales, Runnable anew, WeightSet set) {
        PersonData before = scales.me().orElseThrow().data();
        scales.edit(data -> data.withWeightSet(set.id()));
        anew.run();
        Undo.offer("Your weights are those of \"" + set.name() + "\" now.", () -> {
            scales.edit(data -> data.withWeightSet(before.weightSet() == null ? "" : before.weightSet())
                    .withWeights(before.weights()));
            anew.run();
        });
    }
}
