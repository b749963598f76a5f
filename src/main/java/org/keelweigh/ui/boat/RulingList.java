package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextField;
import java.util.List;
import org.keelweigh.appraisal.Ruling;

/** The hard rules that the boat breaks, each with its reason and what would lift it. */
final class RulingList extends Div {

    private final transient BoatDesk desk;
    private transient List<Ruling> shown = List.of();

    RulingList(BoatDesk desk) {
        this.desk = desk;
        addClassName("kw-stack");
        setTestId("boat-rulings");
    }

    /** Builds the list anew only when a ruling came, went or was lifted, so that a reason being typed stays. */
    void refresh() {
        List<Ruling> now = desk.report().rulings();
        if (!now.equals(shown)) {
            shown = now;
            removeAll();
            now.forEach(each -> add(ruling(each)));
        }
    }

    private Div ruling(Ruling ruling) {
        Div box = new Div();
        box.addClassName("kw-boat-ruling");
        box.add(
                Plain.row(
                        "kw-row",
                        Plain.tag(
                                ruling.stands()
                                        ? "Ruled out: " + ruling.rule().label()
                                        : "Lifted: " + ruling.rule().label(),
                                ruling.stands() ? Plain.Tone.BAD : Plain.Tone.WARN),
                        new Span(ruling.reason())),
                Plain.soft("What would lift it: " + ruling.remedy()));
        ruling.lifted().ifPresentOrElse(reason -> box.add(lifted(ruling, reason)), () -> box.add(lift(ruling)));
        return box;
    }

    private Div lift(Ruling ruling) {
        TextField reason = new TextField("Your reason for keeping it in");
        reason.setTestId("lift-reason-" + ruling.rule().code());
        NativeButton lift = new NativeButton("Lift it for this reason", click -> {
            if (reason.getValue().isBlank()) {
                reason.setErrorMessage("A ruling is lifted only with a written reason.");
                reason.setInvalid(true);
            } else {
                change(ruling, reason.getValue());
            }
        });
        lift.setTestId("lift-" + ruling.rule().code());
        Div row = Plain.row("kw-row", reason, lift);
        row.addClassName("kw-boat-lift");
        return row;
    }

    private Div lifted(Ruling ruling, String reason) {
        return Plain.row(
                "kw-row",
                new Span("Lifted because: " + reason),
                new NativeButton("Let it stand again", click -> change(ruling, "")));
    }

    private void change(Ruling ruling, String reason) {
        desk.edit("liftedRulings", data -> data.withLifted(ruling.rule().code(), reason));
    }
}
