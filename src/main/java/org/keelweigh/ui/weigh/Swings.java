package org.keelweigh.ui.weigh;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.keelweigh.appraisal.Family;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.appraisal.Yardstick;

/** Asks for each criterion what the step from worst to best is worth. */
final class Swings extends Section {

    private static final double MOST = 100;

    private final transient Scales scales;
    private final List<SwingRow> rows = new ArrayList<>();
    private final Span scaleHint = new Span();
    private final Div scaling;

    Swings(Scales scales) {
        this.scales = scales;
        addClassName("kw-sheet");
        Paragraph how = new Paragraph(
                "Give 100 to the step that would please you most; then say what each other step is worth beside it. "
                        + "A step worth half as much gets 50.");
        Button scale = new Button("Make it 100", click -> scale());
        scale.setTestId("make-100");
        scaling = new Div(scaleHint, scale);
        scaling.addClassNames("kw-row", "kw-caution");
        add(new H2("2. What each step is worth"), how, scaling);
        for (Family family : Family.values()) {
            addFamily(family);
        }
        refresh();
    }

    private void addFamily(Family family) {
        List<Yardstick> mine = scales.yardsticks().all().stream()
                .filter(each -> each.family() == family)
                .toList();
        if (!mine.isEmpty()) {
            H3 heading = new H3(family.label());
            heading.addClassName("kw-weigh-family");
            add(heading);
            for (Yardstick each : mine) {
                SwingRow row = new SwingRow(each, scales.measured().situation().display(), this::changed);
                rows.add(row);
                add(row);
            }
        }
    }

    private void changed(String criterion, double points) {
        SortedMap<String, Double> swings = new TreeMap<>(scales.swings());
        rows.forEach(row -> swings.put(row.id(), row.points()));
        swings.put(criterion, points);
        scales.edit(data -> data.withWeights(swings));
        refresh();
    }

    private void scale() {
        SortedMap<String, Double> scaled = scales.swings();
        scales.edit(data -> data.withWeights(scaled));
        refresh();
    }

    private void refresh() {
        SortedMap<String, Double> points = shown();
        Perspective mine = scales.mine();
        for (SwingRow row : rows) {
            int column = scales.yardsticks().criteria().ids().indexOf(row.id());
            Optional<String> warning = mine.share(column) == 0
                    ? Optional.empty()
                    : scales.measured()
                            .likeness(mine, column)
                            .flatMap(each ->
                                    each.warning(scales.measured().situation().display()));
            row.show(points.get(row.id()), mine.share(column), warning);
        }
        double most =
                points.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        scaling.setVisible(most < MOST && most > 0);
        scaleHint.setText("Your most important step has " + Math.round(most) + " points; it should have 100.");
    }

    /** Points of a set to start from are brought to the scale of 100; one's own are shown as they were given. */
    private SortedMap<String, Double> shown() {
        SortedMap<String, Double> own = scales.me().orElseThrow().data().weights();
        return own.isEmpty()
                ? scales.swings()
                : new TreeMap<>(
                        scales.yardsticks().points(scales.me().orElseThrow().data()));
    }
}
