package org.keelweigh.ui.compare;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextField;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.appraisal.Ruling;

/** Every hard rule that a boat breaks: the reason, what would lift it, and lifting it with a written reason. */
class RulingsSection extends Fold implements Part {

    /** Lifts a ruling for a written reason, or lets it stand again when the reason is blank. */
    @FunctionalInterface
    interface Lifting {
        void lift(BoatReport boat, Ruling ruling, String reason);
    }

    private static final int LONGEST_REASON = 500;

    private final Div list = new Div();
    private final Map<String, String> drafts = new HashMap<>();
    private transient List<BoatReport> shown = List.of();
    private final transient Lifting lifting;

    RulingsSection(Lifting lifting) {
        super("Ruled out, and why");
        this.lifting = lifting;
        setId("rulings");
        setVisible(false);
        list.addClassName("kw-stack");
        put(list);
    }

    @Override
    public void show(Glance glance) {
        if (shown.equals(glance.measured().boats())) {
            return;
        }
        shown = glance.measured().boats();
        list.removeAll();
        for (BoatReport boat : glance.measured().boats()) {
            boat.rulings().forEach(ruling -> list.add(told(boat, ruling)));
        }
        setVisible(list.getComponentCount() > 0);
    }

    private static String key(BoatReport boat, Ruling ruling) {
        return ruling.rule().code() + "-" + boat.id();
    }

    private Div told(BoatReport boat, Ruling ruling) {
        Span tag = new Span(ruling.stands() ? "ruled out" : "lifted");
        tag.addClassName("kw-tag");
        tag.getElement().setAttribute("data-tone", ruling.stands() ? "bad" : "warn");
        Div told = new Div(
                new H3(new Span(boat.name() + ": " + ruling.rule().label() + " "), tag),
                new Paragraph(ruling.reason()),
                new Paragraph("What would lift it: " + ruling.remedy()));
        told.add(ruling.lifted().map(reason -> lifted(boat, ruling, reason)).orElseGet(() -> standing(boat, ruling)));
        return told;
    }

    private Div lifted(BoatReport boat, Ruling ruling, String reason) {
        Button again = new Button("Let it stand again", click -> lifting.lift(boat, ruling, ""));
        again.setTestId("stand-" + key(boat, ruling));
        Div row = new Div(new Span("Lifted because: " + reason), again);
        row.addClassName("kw-row");
        return row;
    }

    private Div standing(BoatReport boat, Ruling ruling) {
        TextField reason = new TextField("Why " + boat.name() + " may stay in all the same");
        reason.setTestId("reason-" + key(boat, ruling));
        reason.setMaxLength(LONGEST_REASON);
        reason.setValue(drafts.getOrDefault(key(boat, ruling), ""));
        reason.addValueChangeListener(change -> drafts.put(key(boat, ruling), change.getValue()));
        reason.addClassName("kw-wide");
        Button lift = new Button("Lift it with this reason", click -> lift(boat, ruling, reason));
        lift.setTestId("lift-" + key(boat, ruling));
        Div row = new Div(reason, lift);
        row.addClassNames("kw-row", "kw-lifting");
        return row;
    }

    private void lift(BoatReport boat, Ruling ruling, TextField reason) {
        if (reason.getValue().isBlank()) {
            reason.setErrorMessage("Write the reason down; it is shown wherever this boat is judged.");
            reason.setInvalid(true);
        } else {
            drafts.remove(key(boat, ruling));
            lifting.lift(boat, ruling, reason.getValue());
        }
    }
}
