package org.keelweigh.ui.pairs;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.progressbar.ProgressBar;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.decision.weight.PairAnswers.Pair;
import org.keelweigh.shortlist.Display;

/** Compares what matters two at a time, a question after the other, and turns the answers into points. */
@StyleSheet("css/pairs.css")
public final class PairDialog extends Dialog {

    private static final HowMuch[] SMALLEST_FIRST = {HowMuch.SLIGHTLY, HowMuch.CLEARLY, HowMuch.FAR};

    private final transient PairQuestions questions;
    private final transient Display display;
    private final Paragraph progress = new Paragraph();
    private final ProgressBar bar = new ProgressBar();
    private final H3 heading = new H3();
    private final Div body = new Div();
    private final Button back = new Button("Back one question");
    private final Button use = new Button("Use these points");

    /**
     * Prepares the questions.
     *
     * @param yardsticks the criteria
     * @param points the points as they are now, by criterion
     * @param display how figures are written
     * @param taken hears the points that follow from the answers, when the person wants to use them
     */
    public PairDialog(
            List<Yardstick> yardsticks,
            Map<String, Double> points,
            Display display,
            Consumer<Map<String, Double>> taken) {
        this.questions = new PairQuestions(yardsticks, points);
        this.display = display;
        setHeaderTitle("Compare two at a time");
        setWidth("36rem");
        addClassName("kw-pairs");
        progress.setTestId("pair-progress");
        progress.addClassName("kw-soft");
        bar.getElement().setAttribute("aria-hidden", "true");
        heading.getElement().setAttribute("tabindex", "-1");
        body.addClassName("kw-pair-body");
        back.setTestId("pair-back");
        back.addClickListener(click -> {
            questions.back();
            show();
        });
        use.setTestId("pair-use");
        use.addClickListener(click -> {
            close();
            taken.accept(questions.points());
        });
        getFooter().add(new Button("Leave it as it was", click -> close()), back, use);
        add(progress, bar, heading, body);
        show();
    }

    private void show() {
        body.removeAll();
        back.setEnabled(questions.returnable());
        use.setVisible(questions.current().isEmpty());
        bar.setValue((double) Math.min(questions.number() - 1, questions.needed()) / questions.needed());
        questions.current().ifPresentOrElse(this::ask, this::tell);
        heading.getElement().callJsFunction("focus");
    }

    private void ask(Pair pair) {
        boolean check = questions.number() > questions.needed();
        progress.setText(
                check
                        ? "One more, to check your answers"
                        : "Question " + questions.number() + " of " + questions.needed());
        heading.setText("Which of these two steps is worth more to you?");
        Yardstick first = questions.yardstick(pair.first());
        Yardstick second = questions.yardstick(pair.second());
        Div steps = new Div(step(first), step(second));
        steps.addClassName("kw-pair-steps");
        Div choices = new Div();
        choices.addClassName("kw-pair-choices");
        for (int i = SMALLEST_FIRST.length - 1; i >= 0; i--) {
            HowMuch more = SMALLEST_FIRST[i];
            choices.add(choice(first.name() + ": " + more.words(), "pair-first-" + (i + 1), more.times()));
        }
        choices.add(choice("Both about the same", "pair-same", 1));
        for (int i = 0; i < SMALLEST_FIRST.length; i++) {
            HowMuch more = SMALLEST_FIRST[i];
            choices.add(choice(second.name() + ": " + more.words(), "pair-second-" + (i + 1), 1 / more.times()));
        }
        body.add(steps, choices);
    }

    private Component step(Yardstick yardstick) {
        Span name = new Span(yardstick.name());
        name.addClassName("kw-pair-name");
        Span range = new Span("from " + yardstick.unit().write(yardstick.swingFrom(), display) + " to "
                + yardstick.unit().write(yardstick.swingTo(), display));
        Span meaning = new Span(yardstick.meaning());
        meaning.addClassName("kw-soft");
        return new Div(name, range, meaning);
    }

    private Button choice(String words, String testId, double times) {
        Button choice = new Button(words, click -> {
            questions.answer(times);
            show();
        });
        choice.setTestId(testId);
        return choice;
    }

    private void tell() {
        progress.setText("That is enough to work with");
        heading.setText("What your answers come to");
        body.add(new PairOutcome(questions, this::show));
    }
}
