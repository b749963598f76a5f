package org.keelweigh.ui.compare;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.keelweigh.appraisal.Reasons;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.decision.Difference;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.chart.DifferenceBar;
import org.keelweigh.ui.chart.DifferenceBarData;
import org.keelweigh.ui.chart.Figure;

/** Why one boat beats another: two boats to choose, a sentence and the difference, criterion by criterion. */
class WhySection extends Fold implements Part {

    /** Smaller differences are not worth a bar. */
    private static final double WORTH_SHOWING = 1e-9;

    private final Select<CandidateId> one = new Select<>();
    private final Select<CandidateId> other = new Select<>();
    private final Paragraph sentence = new Paragraph();
    private final DifferenceBar bar = new DifferenceBar("Where each of the two is ahead, in points");
    private transient @Nullable Glance glance;

    WhySection() {
        super("Why one beats the other");
        one.setLabel("This boat");
        one.setTestId("why-one");
        other.setLabel("against");
        other.setTestId("why-other");
        sentence.setId("why");
        sentence.getElement().setAttribute("aria-live", "polite");
        one.addValueChangeListener(change -> chosen(change.isFromClient()));
        other.addValueChangeListener(change -> chosen(change.isFromClient()));
        Div choice = new Div(one, other);
        choice.addClassName("kw-row");
        put(choice, sentence, bar);
    }

    DifferenceBar bar() {
        return bar;
    }

    @Override
    public void show(Glance now) {
        boolean sameBoats = glance != null
                && glance.measured().boats().equals(now.measured().boats());
        glance = now;
        if (!sameBoats) {
            offer(now);
        }
        draw(now);
    }

    /** Chooses the two boats, also from elsewhere on the page. */
    void choose(CandidateId boat) {
        if (!boat.equals(one.getValue())) {
            other.setValue(one.getValue());
            one.setValue(boat);
            if (glance != null) {
                draw(glance);
            }
        }
    }

    private void offer(Glance now) {
        CandidateId first = one.getValue();
        CandidateId second = other.getValue();
        List<CandidateId> boats =
                now.order().stream().map(place -> now.boat(place).id()).toList();
        for (Select<CandidateId> select : List.of(one, other)) {
            select.setItems(boats);
            select.setItemLabelGenerator(id -> now.name(place(now, id)));
        }
        one.setValue(boats.contains(first) ? first : boats.getFirst());
        other.setValue(boats.contains(second) && !second.equals(one.getValue()) ? second : another(boats));
    }

    private CandidateId another(List<CandidateId> boats) {
        return boats.stream()
                .filter(each -> !each.equals(one.getValue()))
                .findFirst()
                .orElseThrow();
    }

    private void chosen(boolean byPerson) {
        if (byPerson && glance != null) {
            draw(glance);
        }
    }

    private void draw(Glance now) {
        int a = place(now, one.getValue());
        int b = place(now, other.getValue());
        boolean two = a != b;
        bar.setVisible(two);
        sentence.setText(two ? words(now, a, b) : "Choose two different boats.");
        if (two) {
            bar.setData(data(now, a, b));
        }
    }

    private static String words(Glance now, int a, int b) {
        double margin = now.perspective().difference(a, b).margin();
        int ahead = margin >= 0 ? a : b;
        int behind = margin >= 0 ? b : a;
        String ruled = now.perspective().ruledOut(ahead) ? " (though it is ruled out)" : "";
        return now.name(ahead) + ruled + " is " + Glance.points(Math.abs(margin)) + " ahead of " + now.name(behind)
                + ". " + new Reasons(now.measured(), now.perspective()).of(ahead, behind);
    }

    private static int place(Glance now, CandidateId id) {
        return IntStream.range(0, now.measured().boats().size())
                .filter(at -> now.boat(at).id().equals(id))
                .findFirst()
                .orElse(0);
    }

    static DifferenceBarData data(Glance glance, int a, int b) {
        boolean ahead = glance.perspective().difference(a, b).margin() >= 0;
        int better = ahead ? a : b;
        int behind = ahead ? b : a;
        Difference difference = glance.perspective().difference(better, behind);
        List<DifferenceBarData.Row> rows = difference.parts().stream()
                .filter(part -> Math.abs(part.points()) > WORTH_SHOWING)
                .sorted(Comparator.comparing(Difference.Part::points).reversed())
                .map(part -> row(glance.yardsticks().get(part.criterion()), part.points()))
                .toList();
        return new DifferenceBarData(
                glance.name(better) + " is " + Glance.points(difference.margin()) + " ahead of " + glance.name(behind)
                        + ".",
                glance.name(better),
                glance.name(behind),
                "points of value",
                rows.isEmpty() ? List.of(row(glance.yardsticks().getFirst(), 0)) : rows,
                signed(difference.margin()));
    }

    private static DifferenceBarData.Row row(Yardstick yardstick, double points) {
        return new DifferenceBarData.Row(yardstick.name(), Looks.family(yardstick.family()), signed(points));
    }

    private static Figure signed(double points) {
        String number = Display.number(Math.abs(points), 1);
        String sign = "0.0".equals(number) ? "" : points < 0 ? "−" : "+";
        return new Figure(points, sign + number + " points");
    }
}
