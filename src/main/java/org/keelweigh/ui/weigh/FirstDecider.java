package org.keelweigh.ui.weigh;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.TextField;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.PersonData;
import org.keelweigh.shortlist.PersonId;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.ui.shell.Visitor;

/** Where nobody is named yet: the way to begin. */
final class FirstDecider extends Section {

    FirstDecider(ShortlistEditing editing, Facts facts, Runnable anew) {
        addClassName("kw-sheet");
        TextField name = new TextField("Your name");
        name.setTestId("first-decider");
        Button begin = new Button("Begin to weigh", click -> {
            if (name.getValue().isBlank()) {
                name.setInvalid(true);
                name.setErrorMessage("A name is needed.");
                return;
            }
            PersonId id = editing.add(
                            facts.shortlist().id(),
                            PersonData.named(name.getValue().strip()),
                            Visitor.name())
                    .id();
            Scales.iAm(facts.shortlist().id(), id);
            anew.run();
        });
        begin.addThemeVariants(ButtonVariant.PRIMARY);
        begin.setTestId("begin");
        Div line = new Div(name, begin);
        line.addClassName("kw-row");
        add(
                new H2("Nobody weighs here yet"),
                new Paragraph(
                        "Until somebody does, the usual weights of a first boat are taken. Say who you are to set your own; "
                                + "others join on the page about trip and people."),
                line);
    }
}
