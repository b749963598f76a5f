package org.keelweigh.ui.weigh;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;

/** Lets somebody say that their weighing is done. */
final class Done extends Section {

    Done(Scales scales, Runnable anew) {
        addClassName("kw-sheet");
        Button done = new Button("I am done weighing", click -> {
            scales.edit(data -> data.withWeighed(true));
            anew.run();
        });
        done.addThemeVariants(ButtonVariant.PRIMARY);
        done.setTestId("done");
        add(
                new H2("4. Done"),
                new Paragraph(
                        "When everybody has said so, all weights are shown side by side. You can come back to yours at any time."),
                done);
    }
}
