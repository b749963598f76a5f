package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Article;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H4;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.CheckBelief;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Grade;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.Outcome;
import org.keelweigh.shortlist.CandidateData;

/** One check: what each outcome looks like, and one tap to say which it is. */
final class CheckRow extends Article {

    private static final String PRESSED = "aria-pressed";

    private final transient BoatDesk desk;
    private final transient Check check;
    private final transient Supplier<Method> method;
    private final Map<Outcome, NativeButton> outcomes = new EnumMap<>(Outcome.class);
    private final NativeButton notChecked = new NativeButton("Not checked", click -> clear());
    private final NativeButton more = new NativeButton("How, notes, photos, chances", click -> toggle());
    private final Span state = new Span();
    private @Nullable CheckDetails details;

    CheckRow(BoatDesk desk, Check check, Supplier<Method> method) {
        this.desk = desk;
        this.check = check;
        this.method = method;
        addClassName("kw-boat-check");
        setTestId("check-" + check.id());
        H4 title = new H4(check.title());
        state.addClassName("kw-soft");
        more.setTestId("more-" + check.id());
        more.getElement().setAttribute("aria-expanded", "false");
        more.getElement().setAttribute("aria-label", "How, notes, photos, chances: " + check.title());
        Div taps = Plain.row("kw-boat-outcomes");
        taps.getElement().setAttribute("role", "group").setAttribute("aria-label", check.title());
        taps.add(tap(Outcome.FINE, check.fineLooksLike()));
        for (Grade grade : check.grades()) {
            taps.add(tap(grade.outcome(), grade.looksLike()));
        }
        Div rest = Plain.row("kw-boat-taps");
        if (check.ifFitted()) {
            rest.add(tap(Outcome.NOT_FITTED, ""));
        }
        notChecked.setTestId("tap-" + check.id() + "-none");
        rest.add(notChecked);
        add(Plain.row("kw-row", title, state), taps, Plain.row("kw-row", rest, more));
    }

    /** Shows the outcome that was just saved, before anything is known of what follows from it. */
    void saved() {
        Optional<Finding> finding = desk.finding(check.id());
        outcomes.forEach((outcome, button) -> press(
                button, finding.filter(found -> found.outcome() == outcome).isPresent()));
        press(notChecked, finding.isEmpty());
        if (details != null) {
            details.showPhotos();
        }
    }

    /** Shows the outcome and the chances as they are now; buttons and open details stay where they are. */
    void refresh() {
        saved();
        Optional<Finding> finding = desk.finding(check.id());
        String words = finding.map(this::made).orElseGet(this::chance);
        if (!words.equals(state.getText())) {
            state.setText(words);
        }
        if (details != null) {
            details.refresh();
        }
    }

    /** Puts the keyboard on the first outcome, after the button that showed this row has gone. */
    void focusFirst() {
        outcomes.values().iterator().next().focus();
    }

    private NativeButton tap(Outcome outcome, String looksLike) {
        NativeButton button = new NativeButton();
        button.addClassName("kw-boat-tap");
        button.setTestId("tap-" + check.id() + "-" + outcome.code());
        Span label = new Span(Plain.capital(outcome.label()));
        label.addClassName("kw-boat-tap-name");
        button.add(label);
        if (!looksLike.isEmpty()) {
            button.add(new Span(Plain.capital(looksLike)));
        }
        button.getElement().setAttribute("data-outcome", outcome.code());
        button.addClickListener(click -> record(data -> data.withFinding(tapped(data, outcome))));
        outcomes.put(outcome, button);
        return button;
    }

    private void record(UnaryOperator<CandidateData> change) {
        getUI().ifPresent(ui -> desk.record(ui, "findings." + check.id(), change));
    }

    /** A new look takes the method chosen for all; what was noted before stays. */
    private Finding tapped(CandidateData data, Outcome outcome) {
        return data.findings().stream()
                .filter(each -> each.check().equals(check.id()))
                .findFirst()
                .map(old -> new Finding(check.id(), outcome, old.method(), old.measured(), old.note(), old.quote()))
                .orElseGet(() -> new Finding(check.id(), outcome, method.get(), null, null, null));
    }

    private void clear() {
        record(data -> data.withoutFinding(check.id()));
    }

    private void toggle() {
        if (details == null) {
            details = new CheckDetails(desk, check);
            details.refresh();
            add(details);
        } else {
            remove(details);
            details = null;
        }
        more.getElement().setAttribute("aria-expanded", String.valueOf(details != null));
    }

    private String made(Finding finding) {
        return Plain.capital(finding.outcome().label()) + ", "
                + finding.method().label()
                + (finding.measured() == null ? "" : ", " + check.told(finding.measured()))
                + (finding.note() == null ? "" : ": " + finding.note());
    }

    private String chance() {
        String time = Math.round(check.minutes()) + " min";
        if (!desk.report().belief().network().knowsCheck(check.id())) {
            return time;
        }
        CheckBelief belief = desk.report().belief().check(check.id());
        String now = desk.display().percent(belief.now().majorOrWorse());
        String before = desk.display().percent(belief.before().majorOrWorse());
        return time + " · chance of a major fault or worse " + now + (now.equals(before) ? "" : ", was " + before);
    }

    private static void press(NativeButton button, boolean pressed) {
        button.getElement().setAttribute(PRESSED, String.valueOf(pressed));
    }
}
