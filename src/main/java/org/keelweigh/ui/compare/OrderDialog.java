package org.keelweigh.ui.compare;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.decision.Weights;
import org.keelweigh.decision.weight.RankOrder;

/** Points from nothing but an order: the mean of all weights that keep it. */
class OrderDialog extends Dialog {

    private static final double ALL_POINTS = 100;

    private final List<Yardstick> order;
    private final OrderedList list = new OrderedList();

    OrderDialog(List<Yardstick> yardsticks, Map<String, Double> points, Consumer<Map<String, Double>> use) {
        setHeaderTitle("Put them in order");
        setWidth("34rem");
        order = new ArrayList<>(yardsticks);
        order.sort(Comparator.comparing((Yardstick each) -> points.getOrDefault(each.id(), 0.0))
                .reversed());
        list.addClassName("kw-order");
        add(
                new Paragraph("What matters most goes first. The points then follow from the order alone, as the mean "
                        + "of all weights that keep it (rank-order centroid)."),
                list);
        Button take = new Button("Use this order", click -> {
            use.accept(points(order.stream().map(Yardstick::id).toList()));
            close();
        });
        take.setTestId("use-order");
        getFooter().add(new Button("Leave it as it was", click -> close()), take);
        draw(-1);
    }

    /** The first gets 100 points and the others in proportion. */
    static Map<String, Double> points(List<String> mostImportantFirst) {
        Weights weights = RankOrder.CENTROID.weights(mostImportantFirst);
        double most = weights.share(mostImportantFirst.getFirst());
        Map<String, Double> points = new LinkedHashMap<>();
        mostImportantFirst.forEach(id -> points.put(id, ALL_POINTS * weights.share(id) / most));
        return points;
    }

    /** Draws the list anew and gives the focus back to the criterion that was moved. */
    private void draw(int moved) {
        list.removeAll();
        for (int at = 0; at < order.size(); at++) {
            list.add(item(at, at == moved));
        }
    }

    private ListItem item(int at, boolean moved) {
        Yardstick yardstick = order.get(at);
        Button up = step(yardstick, at, -1, "Up");
        Button down = step(yardstick, at, 1, "Down");
        up.setEnabled(at > 0);
        down.setEnabled(at < order.size() - 1);
        if (moved) {
            (up.isEnabled() ? up : down).focus();
        }
        Span name = new Span(yardstick.name());
        name.addClassName("kw-order-name");
        return new ListItem(name, up, down);
    }

    private Button step(Yardstick yardstick, int at, int by, String word) {
        Button button = new Button(word, click -> {
            Collections.swap(order, at, at + by);
            draw(at + by);
        });
        button.setAriaLabel(word + ": " + yardstick.name());
        button.setTestId(word.toLowerCase(Locale.ROOT) + "-" + yardstick.id());
        return button;
    }
}
