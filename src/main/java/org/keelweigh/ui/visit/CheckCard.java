package org.keelweigh.ui.visit;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.NumberField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.keelweigh.appraisal.CheckOutlook;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Grade;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.StopRule;
import org.keelweigh.condition.WaterNeed;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.Saved;
import org.keelweigh.ui.photo.PhotoStrip;
import org.keelweigh.ui.photo.PhotoUpload;
import org.keelweigh.ui.shell.Undo;
import org.keelweigh.ui.shell.Visitor;

/** One check: what to do, what each result looks like, and one tap that saves it. */
final class CheckCard extends Section implements VisitPanel {

    private static final int LONGEST_NOTE = 2000;

    private final transient VisitDesk desk;
    private final transient Check check;
    private final transient Consumer<Outcome> tapped;
    private final H2 title;
    private final Paragraph why = new Paragraph();
    private final Div results = new Div();
    private final Div told = new Div();
    private final TextArea note = new TextArea("Note");
    private final NumberField measure = new NumberField("Measured, in the unit named above");
    private final Button undone = new Button("Not checked after all", click -> takeAway());
    private final PhotoStrip photos;

    CheckCard(VisitDesk desk, Check check, Consumer<Outcome> tapped) {
        this.desk = desk;
        this.check = check;
        this.tapped = tapped;
        this.title = new H2(check.title());
        this.photos = new PhotoStrip(desk.album(), photo -> check.title());
        addClassNames("kw-sheet", "kw-check");
        setTestId("check-" + check.id());
        title.getElement().setAttribute("tabindex", "-1");
        results.addClassName("kw-results");
        results.getElement().setAttribute("role", "group");
        results.getElement().setAttribute("aria-label", "What did you find?");
        told.getElement().setAttribute("role", "alert");
        Paragraph facts = new Paragraph(effort());
        facts.addClassName("kw-soft");
        why.addClassName("kw-soft");
        why.setTestId("why");
        add(facts, title, why, new Paragraph(check.instruction()));
        check.caution().ifPresent(caution -> {
            Paragraph warning = new Paragraph(caution);
            warning.addClassName("kw-caution");
            add(warning);
        });
        fields();
        PhotoUpload upload = new PhotoUpload(Visitor::name, (picture, who) -> desk.album()
                .add(desk.candidate().id(), check.id(), picture, who)
                .map(photo -> "The photo is saved.")
                .orElse("This boat has as many photos as are kept. Delete one first."));
        undone.addThemeVariants(ButtonVariant.TERTIARY);
        undone.setTestId("not-checked");
        add(results, told, measure, note, undone, photos, upload);
        desk.finding(check.id()).ifPresent(this::show);
        refresh();
    }

    void focusTitle() {
        title.getElement()
                .executeJs("requestAnimationFrame(() => { this.focus({preventScroll: true});"
                        + " this.scrollIntoView({block: 'center'}); })");
    }

    @Override
    public void refresh() {
        results.removeAll();
        results.add(result(Outcome.FINE, check.fineLooksLike(), ""));
        check.grades().forEach(grade -> results.add(result(grade.outcome(), grade.looksLike(), consequence(grade))));
        if (check.ifFitted()) {
            results.add(result(Outcome.NOT_FITTED, "this boat does not have that part", ""));
        }
        Optional<CheckOutlook> outlook = desk.outlook(check);
        why.setVisible(outlook.isPresent());
        outlook.ifPresent(found -> why.setText("Why now: it " + found.reason() + "."));
        photos.show(desk.photos().stream()
                .filter(photo -> check.id().equals(photo.check()))
                .toList());
        boolean made = desk.finding(check.id()).isPresent();
        note.setVisible(made);
        measure.setVisible(made);
        undone.setVisible(made);
        tell();
    }

    private String effort() {
        return check.zone().label() + " · " + Display.number(check.minutes(), 0) + " min"
                + (check.waitingMinutes() > 0
                        ? " and " + Display.number(check.waitingMinutes(), 0) + " min waiting"
                        : "")
                + " · " + check.tools() + (check.water() == WaterNeed.NEEDS ? " · on the water" : "");
    }

    private void fields() {
        note.setMaxLength(LONGEST_NOTE);
        note.setWidthFull();
        note.setValueChangeMode(ValueChangeMode.LAZY);
        note.setTestId("note");
        note.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                save(found -> new Finding(
                        found.check(),
                        found.outcome(),
                        found.method(),
                        found.measured(),
                        change.getValue().isBlank() ? null : change.getValue().strip(),
                        found.quote()));
            }
        });
        measure.setTestId("measure");
        measure.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                save(found -> new Finding(
                        found.check(),
                        found.outcome(),
                        found.method(),
                        change.getValue(),
                        found.note(),
                        found.quote()));
            }
        });
    }

    private Button result(Outcome outcome, String looks, String consequence) {
        Span name = new Span(capital(outcome.label()));
        name.addClassName("kw-result-name");
        Div words = new Div(name, new Span(looks));
        if (!consequence.isEmpty()) {
            Span more = new Span(consequence);
            more.addClassName("kw-soft");
            words.add(more);
        }
        boolean chosen = desk.finding(check.id())
                .map(Finding::outcome)
                .filter(outcome::equals)
                .isPresent();
        Button button = new Button(words, click -> tap(outcome));
        button.addThemeVariants(ButtonVariant.TERTIARY);
        button.getElement().setAttribute("aria-pressed", String.valueOf(chosen));
        button.getElement().setAttribute("data-outcome", outcome.code());
        button.setTestId("result-" + outcome.code());
        return button;
    }

    private String consequence(Grade grade) {
        double factor = desk.measured().situation().priceFactor();
        Display display = desk.measured().situation().display();
        String cost = grade.repairCost().high() > 0
                ? display.money(grade.repairCost().low() * factor) + " to "
                        + display.money(grade.repairCost().high() * factor) + " to put right"
                : "";
        String rule = grade.stop() == StopRule.NO ? "" : grade.stop().label();
        return cost + (cost.isEmpty() || rule.isEmpty() ? "" : "; ") + rule;
    }

    private void tap(Outcome outcome) {
        Optional<Finding> before = desk.finding(check.id());
        Method method = check.water() == WaterNeed.NEEDS ? Method.ON_WATER : Method.TOUCHED;
        Finding finding = before.map(found -> new Finding(
                        check.id(),
                        outcome,
                        method,
                        found.measured(),
                        found.note(),
                        found.outcome() == outcome ? found.quote() : null))
                .orElseGet(() -> new Finding(check.id(), outcome, method, null, null, null));
        if (tell(desk.save(data -> data.withFinding(finding)), outcome)) {
            refresh();
            tapped.accept(outcome);
        }
    }

    private void takeAway() {
        Optional<Finding> before = desk.finding(check.id());
        if (before.isPresent()
                && tell(
                        desk.save(data -> data.withoutFinding(check.id())),
                        before.get().outcome())) {
            note.clear();
            measure.clear();
            refresh();
            Undo.offer(check.title() + " counts as not checked.", () -> {
                desk.save(data -> data.withFinding(before.get()));
                show(before.get());
                refresh();
            });
        }
    }

    private void show(Finding found) {
        note.setValue(found.note() == null ? "" : found.note());
        measure.setValue(found.measured());
    }

    private void save(UnaryOperator<Finding> change) {
        desk.finding(check.id()).ifPresent(found -> {
            Finding finding = change.apply(found);
            tell(desk.save(data -> data.withFinding(finding)), finding.outcome());
        });
    }

    /** Tells what came of a save where it was not simply done; nothing typed is lost. */
    private boolean tell(Saved<Candidate> saved, Outcome mine) {
        return switch (saved) {
            case Saved.Done<Candidate> done -> true;
            case Saved.Merged<Candidate> merged -> true;
            case Saved.Clashed<Candidate> clashed -> {
                refresh();
                told.removeAll();
                Paragraph words =
                        new Paragraph(clashed.by() + " saved another result of this check at the same moment. "
                                + "Theirs stands and is marked above; tap yours (" + mine.label()
                                + ") again to have it count.");
                words.addClassName("kw-caution");
                told.add(words);
                yield false;
            }
            case Saved.Gone<Candidate> gone -> {
                told.removeAll();
                told.add(new Paragraph("Somebody has deleted this boat meanwhile, so this was not saved."));
                yield false;
            }
        };
    }

    /** A finding that stops a purchase is told at once, with why. */
    private void tell() {
        told.removeAll();
        desk.finding(check.id())
                .flatMap(found -> check.grade(found.outcome()))
                .filter(grade -> grade.stop() != StopRule.NO || grade.safety() >= 4)
                .ifPresent(grade -> {
                    String why = grade.why().orElse(grade.looksLike());
                    Paragraph words = new Paragraph((grade.stop() == StopRule.NO
                                    ? "Mend this before any launch"
                                    : capital(grade.stop().label()))
                            + ": " + why + ".");
                    words.addClassName(grade.stop() == StopRule.YES ? "kw-stop" : "kw-caution");
                    told.add(words);
                });
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
