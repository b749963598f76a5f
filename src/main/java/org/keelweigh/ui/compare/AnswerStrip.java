package org.keelweigh.ui.compare;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.keelweigh.appraisal.Answer;
import org.keelweigh.appraisal.Answers;
import org.keelweigh.appraisal.NextChecks;
import org.keelweigh.ui.shell.Places;

/** The answer in words: which boat, why, three figures, what would change it and what to do next. */
class AnswerStrip extends Section implements Part {

    private final H2 headline = new H2();
    private final Span strength = new Span();
    private final Div sentences = new Div();
    private final Div figures = new Div();
    private final Div changes = new Div();
    private final Paragraph next = new Paragraph();
    private transient @Nullable Answer shown;

    AnswerStrip() {
        setId("answer");
        addClassNames("kw-sheet", "kw-answer");
        strength.addClassName("kw-tag");
        Div told = new Div(headline, strength, sentences);
        told.addClassName("kw-answer-told");
        told.getElement().setAttribute("aria-live", "polite");
        figures.addClassName("kw-answer-figures");
        changes.addClassName("kw-answer-changes");
        next.addClassName("kw-answer-next");
        next.setId("next-step");
        add(told, figures, changes, next);
    }

    @Override
    public void show(Glance glance) {
        Answer answer =
                Answers.of(glance.measured(), glance.perspective(), Optional.of(glance.confidence()), Optional.empty());
        if (answer.equals(shown)) {
            return;
        }
        shown = answer;
        headline.setText(answer.headline());
        strength.setText(words(answer.strength()));
        strength.getElement().setAttribute("data-tone", tone(answer.strength()));
        strength.setVisible(answer.strength() != Answer.Strength.NONE);
        sentences.removeAll();
        answer.sentences().forEach(each -> sentences.add(new Paragraph(each)));
        showFigures(answer.figures());
        showChanges(answer.changes());
    }

    /** Says that the next check is being worked out. */
    void awaitNext() {
        next.setText("Working out what to check next…");
    }

    /** Says what to check next, and leads there. */
    void showNext(Glance glance, NextChecks checks) {
        next.removeAll();
        next.add(new Span(checks.sentence() + " "));
        checks.visit().stream()
                .findFirst()
                .ifPresent(first -> next.add(new Anchor(
                        Places.visit(
                                glance.shortlist(), glance.boat(first.boat()).id()),
                        "Go and look at " + glance.name(first.boat()))));
    }

    private void showFigures(List<Answer.KeyFigure> all) {
        figures.removeAll();
        DescriptionList list = new DescriptionList();
        for (Answer.KeyFigure figure : all) {
            Span value = new Span(figure.value());
            value.addClassName("kw-figure");
            Span note = new Span(figure.note());
            note.addClassName("kw-soft");
            Div group = new Div(new DescriptionList.Term(figure.label()), new DescriptionList.Description(value, note));
            list.getElement().appendChild(group.getElement());
        }
        figures.add(list);
        figures.setVisible(!all.isEmpty());
    }

    private void showChanges(List<String> all) {
        changes.removeAll();
        changes.add(new H3("What would change it"));
        if (all.isEmpty()) {
            changes.add(new Paragraph("No change of a single weight would put another boat first."));
        } else {
            UnorderedList list = new UnorderedList();
            all.forEach(each -> list.add(new ListItem(each)));
            changes.add(list);
        }
        changes.setVisible(figures.isVisible());
    }

    private static String words(Answer.Strength strength) {
        return switch (strength) {
            case NONE -> "";
            case OPEN -> "still open";
            case LIKELY -> "likely";
            case SURE -> "clear";
        };
    }

    private static String tone(Answer.Strength strength) {
        return switch (strength) {
            case NONE, OPEN -> "warn";
            case LIKELY -> "";
            case SURE -> "good";
        };
    }
}
