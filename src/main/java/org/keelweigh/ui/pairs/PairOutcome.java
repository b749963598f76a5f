package org.keelweigh.ui.pairs;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.decision.weight.PairwiseComparison;
import org.keelweigh.shortlist.Display;

/** The points that follow from the answers, and how well the answers agree. */
final class PairOutcome extends Div {

    private final transient PairQuestions questions;

    PairOutcome(PairQuestions questions, Runnable ask) {
        this.questions = questions;
        Paragraph agreement = new Paragraph(agreement());
        agreement.setTestId("pair-agreement");
        if (questions.odd().isPresent()) {
            agreement.addClassName("kw-caution");
        }
        Button again = new Button("Ask that one again", click -> {
            questions.askOddAgain();
            ask.run();
        });
        again.setTestId("pair-again");
        again.setVisible(questions.odd().isPresent());
        Button more = new Button("One more question, to check", click -> {
            questions.askMore();
            ask.run();
        });
        more.setTestId("pair-more");
        more.setVisible(questions.moreToAsk());
        Div tools = new Div(again, more);
        tools.addClassName("kw-row");
        add(agreement, tools, points(), leftOut(), reckoning());
    }

    private String agreement() {
        return questions
                .odd()
                .map(this::contradiction)
                .orElseGet(() -> questions.checked()
                        ? "Your answers agree with each other."
                        : "So far no answer could contradict another, because no more was asked than is needed. "
                                + "A question more would check them.");
    }

    private String contradiction(PairwiseComparison.Contradiction odd) {
        String first = "“" + questions.yardstick(odd.first()).name() + "”";
        String second = "“" + questions.yardstick(odd.second()).name() + "”";
        return "Two of your answers pull in different directions: you said that "
                + HowMuch.compared(first, second, odd.stated()) + ", but by your other answers "
                + HowMuch.compared(first, second, odd.implied()) + ".";
    }

    private OrderedList points() {
        Map<String, Double> points = questions.points();
        OrderedList list = new OrderedList();
        list.addClassName("kw-pair-points");
        IntStream.range(0, points.size() - questions.leftOut().size())
                .mapToObj(questions::yardstick)
                .sorted((one, other) -> Double.compare(points.get(other.id()), points.get(one.id())))
                .forEach(each -> list.add(new ListItem(
                        new Span(each.name()), new Span(Display.number(points.get(each.id()), 0) + " points"))));
        return list;
    }

    private Paragraph leftOut() {
        Paragraph words = new Paragraph("Not asked about, because they have no points: "
                + questions.leftOut().stream().map(Yardstick::name).collect(Collectors.joining(", ")) + ".");
        words.addClassName("kw-soft");
        words.setVisible(!questions.leftOut().isEmpty());
        return words;
    }

    private NativeDetails reckoning() {
        PairwiseComparison.Consistency consistency = questions.consistency();
        Paragraph ratio = new Paragraph("Consistency ratio "
                + Display.number(consistency.ratio(), 2) + "; up to 0.10 is usual (index "
                + Display.number(consistency.index(), 3)
                + " divided by the mean index of answers given at random, table of " + consistency.table()
                + "). Pairs that were not asked are taken to agree, so it could be higher.");
        ratio.setTestId("pair-ratio");
        return new NativeDetails(
                "How it is reckoned",
                new Div(
                        ratio,
                        new Paragraph(
                                "The points come nearest to all answers by least squares of their logarithms; where every pair "
                                        + "is answered these are the geometric means. The step that is worth most has 100 points. "
                                        + "Comparing in pairs and the ratio: T. L. Saaty, 1977 and 1980; geometric means: G. Crawford "
                                        + "and C. Williams, 1985.")));
    }
}
