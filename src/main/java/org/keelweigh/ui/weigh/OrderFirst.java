package org.keelweigh.ui.weigh;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.appraisal.Yardsticks;
import org.keelweigh.decision.weight.RankOrder;

/** Puts the criteria in order and turns the order into points by the rank-order centroid. */
final class OrderFirst extends Div {

    private final transient Scales scales;
    private final transient Runnable anew;
    private final transient List<Yardstick> order;
    private final OrderedList list = new OrderedList();

    OrderFirst(Scales scales, Runnable anew) {
        this.scales = scales;
        this.anew = anew;
        SortedMap<String, Double> now = scales.swings();
        order = new ArrayList<>(scales.yardsticks().all());
        order.sort(Comparator.comparingDouble((Yardstick each) -> now.get(each.id()))
                .reversed());
        list.addClassName("kw-weigh-order");
        Button use = new Button("Turn this order into points", click -> use());
        use.setTestId("use-order");
        add(
                new Paragraph(
                        "Imagine a boat that is at its worst in everything. Which one step to the best would you take first? Put "
                                + "that on top, and so on."),
                list,
                use);
        redraw();
    }

    private void redraw() {
        list.removeAll();
        for (int place = 0; place < order.size(); place++) {
            list.add(item(place));
        }
    }

    private ListItem item(int place) {
        Yardstick yardstick = order.get(place);
        Button up = arrow("↑", "Move " + yardstick.name() + " up", place, place - 1);
        Button down = arrow("↓", "Move " + yardstick.name() + " down", place, place + 1);
        up.setTestId("up-" + yardstick.id());
        down.setTestId("down-" + yardstick.id());
        Div line = new Div(new Span(yardstick.name()), up, down);
        line.addClassName("kw-row");
        return new ListItem(line);
    }

    private Button arrow(String sign, String name, int from, int to) {
        Button button = new Button(sign, click -> {
            Collections.swap(order, from, to);
            redraw();
        });
        button.setAriaLabel(name);
        button.setEnabled(to >= 0 && to < order.size());
        return button;
    }

    private void use() {
        List<String> ids = order.stream().map(Yardstick::id).toList();
        SortedMap<String, Double> points =
                Yardsticks.swings(RankOrder.CENTROID.weights(ids).asMap());
        scales.replace(points, "The order is turned into points.", anew);
    }
}
