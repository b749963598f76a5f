package org.keelweigh.ui.visit;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.keelweigh.appraisal.VisitRoute;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Outcome;

/** The walk round the boat: the clock, how far one is, and one check at a time. */
final class WalkPanel extends Div implements VisitPanel {

    private final transient VisitDesk desk;
    private final Runnable finish;
    private final Paragraph progress = new Paragraph();
    private final Paragraph saved = new Paragraph();
    private final Div place = new Div();
    private final ComboBox<Check> jump = new ComboBox<>();
    private final transient List<String> trail = new ArrayList<>();

    WalkPanel(VisitDesk desk, Runnable finish) {
        this.desk = desk;
        this.finish = finish;
        addClassName("kw-stack");
        Div head = new Div();
        head.addClassName("kw-row");
        Optional.ofNullable(desk.notes().startedAt())
                .ifPresent(start -> head.add(new VisitClock(start, desk.minutes(), desk.now())));
        progress.addClassName("kw-soft");
        progress.setTestId("progress");
        head.add(progress);
        jump.setAriaLabel("Go to a check");
        jump.setPlaceholder("Go to a check");
        jump.setWidthFull();
        jump.setItems(desk.checks());
        jump.setItemLabelGenerator(this::jumpLabel);
        jump.addValueChangeListener(change -> {
            if (change.isFromClient() && change.getValue() != null) {
                open(change.getValue());
            }
        });
        saved.addClassName("kw-soft");
        saved.getElement().setAttribute("role", "status");
        add(head, saved, place, jump);
        refresh();
        desk.at().ifPresentOrElse(this::open, this::next);
    }

    @Override
    public void refresh() {
        progress();
        place.getChildren()
                .filter(VisitPanel.class::isInstance)
                .map(VisitPanel.class::cast)
                .forEach(VisitPanel::refresh);
    }

    private void progress() {
        VisitRoute route = desk.route();
        int all = desk.checks().size();
        int open = route.all().size();
        progress.setText(
                (all - open) + " of " + all + " checks made, " + route.planned().size() + " more fit into your time.");
    }

    private String jumpLabel(Check check) {
        return check.title()
                + desk.finding(check.id())
                        .map(found -> " – " + found.outcome().label())
                        .orElse("");
    }

    private void next() {
        desk.next().ifPresentOrElse(this::open, this::done);
    }

    private void open(Check check) {
        trail.remove(check.id());
        trail.add(check.id());
        desk.open(check);
        jump.clear();
        place.removeAll();
        Button next = new Button("Next check", click -> next());
        next.addThemeVariants(ButtonVariant.PRIMARY);
        next.setTestId("next");
        Button skip = new Button("Skip for now", click -> {
            desk.skip(check.id());
            next();
        });
        skip.setTestId("skip");
        Button back = new Button("Back", click -> back());
        back.setEnabled(trail.size() > 1);
        back.setTestId("back");
        Button end = new Button("Finish", click -> finish.run());
        CheckCard card = new CheckCard(desk, check, outcome -> {
            progress();
            saved.setText("Saved: " + check.title() + ", " + outcome.label() + ".");
            next.setVisible(true);
            skip.setVisible(false);
            // A fault wants a note or a photo; what is fine wants the next check.
            if (outcome == Outcome.FINE || outcome == Outcome.NOT_FITTED) {
                next();
            }
        });
        boolean made = desk.finding(check.id()).isPresent();
        next.setVisible(made);
        skip.setVisible(!made);
        Div buttons = new Div(next, skip, back, end);
        buttons.addClassNames("kw-row", "kw-walk-buttons");
        place.add(card, buttons);
        card.focusTitle();
    }

    private void back() {
        trail.removeLast();
        String before = trail.getLast();
        desk.checks().stream()
                .filter(each -> each.id().equals(before))
                .findFirst()
                .ifPresent(this::open);
    }

    private void done() {
        desk.open(null);
        place.removeAll();
        Button end = new Button("See the results", click -> finish.run());
        end.addThemeVariants(ButtonVariant.PRIMARY);
        end.setTestId("see-results");
        place.add(new H2("Every check is made"), end);
    }
}
