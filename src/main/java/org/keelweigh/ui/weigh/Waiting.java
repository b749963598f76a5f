package org.keelweigh.ui.weigh;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import java.util.stream.Collectors;

/** Somebody is done and others are not. */
final class Waiting extends Section {

    Waiting(Scales scales, Runnable anew) {
        addClassName("kw-sheet");
        String others = scales.deciders().stream()
                .filter(each -> !each.data().weighed())
                .map(each -> each.data().name())
                .collect(Collectors.joining(", "));
        Paragraph waiting = new Paragraph("Still weighing: " + others + ". The weights are shown when all are done.");
        waiting.getElement().setAttribute("aria-live", "polite");
        waiting.setTestId("waiting");
        Button again = new Button("Go on with mine", click -> {
            scales.edit(data -> data.withWeighed(false));
            anew.run();
        });
        again.setTestId("weigh-again");
        add(new H2("You are done"), waiting, again);
    }
}
