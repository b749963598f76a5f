package org.keelweigh.ui.visit;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
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

/** One check: what to do, what each result looks like, and one tap that saves it. */
final class CheckCard extends Section implements VisitPanel {

    private final transient VisitDesk desk;
    private final transient Check check;
    private final transient Consumer<Outcome> tapped;
    private final H2 title;
    private final Paragraph why = new Paragraph();
    private final Map<Outcome, Button> results = new EnumMap<>(Outcome.class);
    private final Div told = new Div();
    private final CheckNotes notes;
    private final Button undone = new Button("Not checked after all", click -> takeAway());
    private final PhotoStrip photos;
    private transient Optional<Finding> toldOf = Optional.empty();

    CheckCard(VisitDesk desk, Check check, Consumer<Outcome> tapped) {
        this.desk = desk;
        this.check = check;
        this.tapped = tapped;
        this.title = new H2(check.title());
        this.notes = new CheckNotes(desk, check, this::tell);
        this.photos = new PhotoStrip(desk.album(), photo -> check.title());
        addClassNames("kw-sheet", "kw-check");
        setTestId("check-" + check.id());
        title.getElement().setAttribute("tabindex", "-1");
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
        PhotoUpload upload = PhotoUpload.into(desk.album(), desk.candidate().id(), check.id());
        undone.addThemeVariants(ButtonVariant.TERTIARY);
        undone.setTestId("not-checked");
        add(results(), told, notes, undone, photos, upload);
        desk.finding(check.id()).ifPresent(notes::show);
        refresh();
    }

    void focusTitle() {
        title.getElement()
                .executeJs("requestAnimationFrame(() => { this.focus({preventScroll: true});"
                        + " this.scrollIntoView({block: 'center'}); })");
    }

    /** Shows what is known now; everything that is still so stays as it is, and so does what somebody is writing. */
    @Override
    public void refresh() {
        Optional<Finding> made = desk.finding(check.id());
        press(made);
        String reason = desk.outlook(check)
                .map(found -> "Why now: it " + found.reason() + ".")
                .orElse("");
        why.setVisible(!reason.isEmpty());
        why.setText(reason);
        photos.show(desk.photos(check));
        tell(made);
    }

    /** Shows the result that was just saved. */
    private void press(Optional<Finding> made) {
        results.forEach((outcome, button) -> button.getElement()
                .setAttribute(
                        "aria-pressed",
                        String.valueOf(
                                made.filter(found -> found.outcome() == outcome).isPresent())));
        notes.setVisible(made.isPresent());
        undone.setVisible(made.isPresent());
    }

    private Div results() {
        Div all = new Div(result(Outcome.FINE, check.fineLooksLike(), ""));
        all.addClassName("kw-results");
        all.getElement().setAttribute("role", "group");
        all.getElement().setAttribute("aria-label", "What did you find?");
        check.grades().forEach(grade -> all.add(result(grade.outcome(), grade.looksLike(), consequence(grade))));
        if (check.ifFitted()) {
            all.add(result(Outcome.NOT_FITTED, "this boat does not have that part", ""));
        }
        return all;
    }

    private String effort() {
        return check.zone().label() + " · " + Display.number(check.minutes(), 0) + " min"
                + (check.waitingMinutes() > 0
                        ? " and " + Display.number(check.waitingMinutes(), 0) + " min waiting"
                        : "")
                + " · " + check.tools() + (check.water() == WaterNeed.NEEDS ? " · on the water" : "");
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
        Button button = new Button(words, click -> tap(outcome));
        button.addThemeVariants(ButtonVariant.TERTIARY);
        button.getElement().setAttribute("data-outcome", outcome.code());
        button.setTestId("result-" + outcome.code());
        results.put(outcome, button);
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
            press(Optional.of(finding));
            tell(Optional.of(finding));
            tapped.accept(outcome);
        }
    }

    private void takeAway() {
        Optional<Finding> before = desk.finding(check.id());
        if (before.isPresent()
                && tell(
                        desk.save(data -> data.withoutFinding(check.id())),
                        before.get().outcome())) {
            notes.clear();
            refresh();
            Undo.offer(check.title() + " counts as not checked.", () -> {
                desk.save(data -> data.withFinding(before.get()));
                notes.show(before.get());
                refresh();
            });
        }
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
    private void tell(Optional<Finding> made) {
        if (made.equals(toldOf)) {
            return;
        }
        toldOf = made;
        told.removeAll();
        made.flatMap(found -> check.grade(found.outcome()))
                .filter(grade -> grade.stop() != StopRule.NO || grade.safety() >= 4)
                .ifPresent(grade -> {
                    String reason = grade.why().orElse(grade.looksLike());
                    Paragraph words = new Paragraph((grade.stop() == StopRule.NO
                                    ? "Mend this before any launch"
                                    : capital(grade.stop().label()))
                            + ": " + reason + ".");
                    words.addClassName(grade.stop() == StopRule.YES ? "kw-stop" : "kw-caution");
                    told.add(words);
                });
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
