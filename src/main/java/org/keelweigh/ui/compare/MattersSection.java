package org.keelweigh.ui.compare;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.keelweigh.appraisal.Family;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.appraisal.WeightSet;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.appraisal.Yardsticks;
import org.keelweigh.shortlist.Display;

/** What matters: points for each criterion, and ways to set them all at once. */
class MattersSection extends Fold {

    /** What people do to weights. */
    interface Listener extends WeightRow.Listener {

        /** All points at once, with what was done in words. */
        void replaced(Map<String, Double> points, String done);

        void started(WeightSet set);

        void returned();
    }

    private final transient Yardsticks yardsticks;
    private final transient Display display;
    private final transient Listener listener;
    private final Map<String, WeightRow> rows = new LinkedHashMap<>();
    private final Map<Family, Span> sums = new LinkedHashMap<>();
    private final Paragraph note = new Paragraph();
    private final Button back = new Button("Back to what was saved");
    private final Select<WeightSet> sets = new Select<>();
    private transient Map<String, Double> points = Map.of();

    MattersSection(Yardsticks yardsticks, Display display, Listener listener) {
        super("What matters");
        this.yardsticks = yardsticks;
        this.display = display;
        this.listener = listener;
        note.setId("weights-note");
        note.addClassName("kw-weights-note");
        note.getElement().setAttribute("role", "status");
        put(
                new Paragraph("How much does each whole step matter to you, from its worse end to its better one?"),
                note,
                tools());
        for (Family family : Family.values()) {
            List<Yardstick> mine = yardsticks.all().stream()
                    .filter(each -> each.family() == family)
                    .toList();
            if (!mine.isEmpty()) {
                put(group(family, mine));
            }
        }
    }

    private Div tools() {
        Button order = new Button("Put them in order", click -> new OrderDialog(
                        yardsticks.all(), points, chosen -> listener.replaced(chosen, "The points follow your order."))
                .open());
        order.setTestId("put-in-order");
        sets.setAriaLabel("Start from a usual set of weights");
        sets.setPlaceholder("Start from a usual set");
        sets.setItems(yardsticks.weightSets());
        sets.setItemLabelGenerator(WeightSet::name);
        sets.setTestId("weight-sets");
        sets.addValueChangeListener(change -> {
            if (change.isFromClient() && change.getValue() != null) {
                listener.started(change.getValue());
                sets.clear();
            }
        });
        back.setTestId("back-to-saved");
        back.addClickListener(click -> listener.returned());
        Div tools = new Div(order, sets, back);
        tools.addClassName("kw-row");
        return tools;
    }

    private Div group(Family family, List<Yardstick> mine) {
        Span sum = new Span();
        sum.addClassName("kw-soft");
        sums.put(family, sum);
        Div head = new Div(new H3(family.label()), sum);
        head.addClassName("kw-weight-family");
        head.getElement().setAttribute("data-family", family.code());
        Div group = new Div(head);
        for (Yardstick each : mine) {
            WeightRow row = new WeightRow(each, display, listener);
            rows.put(each.id(), row);
            group.add(row);
        }
        return group;
    }

    /**
     * Shows the points and what they come to.
     *
     * @param explained what becomes of a move: saved to somebody, or a trial
     * @param returnable whether there is anything to go back to
     */
    void show(Weighing weighing, Perspective perspective, String explained, boolean returnable) {
        points = weighing.points();
        note.setText(explained);
        note.getElement().setAttribute("data-tone", weighing.together() && weighing.moved() ? "warn" : "");
        back.setEnabled(returnable);
        double[] effective = perspective.effectiveShares();
        Map<Family, Double> byFamily = new LinkedHashMap<>();
        for (int c = 0; c < yardsticks.all().size(); c++) {
            Yardstick each = yardsticks.all().get(c);
            double weight = perspective.share(c);
            byFamily.merge(each.family(), weight, Double::sum);
            Optional<String> warning = weight == 0
                    ? Optional.empty()
                    : weighing.measured().likeness(perspective, c).flatMap(found -> found.warning(display));
            rows.get(each.id()).show(points.getOrDefault(each.id(), 0.0), weight, effective[c], warning);
        }
        byFamily.forEach((family, sum) -> sums.get(family).setText(Display.number(100 * sum, 0) + " % of the weight"));
    }
}
