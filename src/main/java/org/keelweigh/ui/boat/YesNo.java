package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.keelweigh.shortlist.FieldPath;

/** A sign that was seen, was looked for and not seen, or was not looked for: one tap each. */
final class YesNo extends Div implements Refreshing {

    private static final String PRESSED = "aria-pressed";

    private final transient BoatDesk desk;
    private final transient FieldPath path;
    private final transient Map<Optional<Boolean>, NativeButton> buttons = new LinkedHashMap<>();

    YesNo(BoatDesk desk, String id, String words) {
        this.desk = desk;
        path = new FieldPath("listing.signals." + id);
        addClassName("kw-boat-sign");
        setTestId("sign-" + id);
        Div group = Plain.row("kw-boat-taps");
        group.getElement().setAttribute("role", "group").setAttribute("aria-label", words);
        for (Optional<Boolean> answer : List.of(Optional.of(true), Optional.of(false), Optional.<Boolean>empty())) {
            NativeButton button = new NativeButton(label(answer), click -> record(answer));
            buttons.put(answer, button);
            group.add(button);
        }
        add(new Span(Plain.capital(words)), group);
    }

    private void record(Optional<Boolean> answer) {
        getUI().ifPresent(ui -> desk.record(ui, path.path(), data -> path.with(data, answer.orElse(null))));
    }

    @Override
    public void refresh() {
        Optional<Boolean> now = path.flag(desk.data());
        buttons.forEach(
                (answer, button) -> button.getElement().setAttribute(PRESSED, String.valueOf(answer.equals(now))));
    }

    private static String label(Optional<Boolean> answer) {
        return answer.map(yes -> yes ? "Yes" : "No").orElse("Not looked");
    }
}
