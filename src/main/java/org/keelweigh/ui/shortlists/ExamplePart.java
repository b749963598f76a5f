package org.keelweigh.ui.shortlists;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import java.util.Locale;
import org.keelweigh.demo.Example;
import org.keelweigh.demo.Examples;
import org.keelweigh.ui.shell.Places;
import org.keelweigh.ui.shell.Visitor;

/** Loads an example with invented people and boats, to look around in. */
final class ExamplePart extends Div {

    ExamplePart(Examples examples) {
        addClassName("kw-columns");
        examples.all().forEach(each -> add(offer(examples, each)));
    }

    private Div offer(Examples examples, Example example) {
        Button look = new Button("Look at the example", click -> {
            var id = examples.load(example, Visitor.name());
            getUI().ifPresent(ui -> ui.navigate(Places.compare(id)));
        });
        look.setAriaLabel("Look at the example: " + example.title());
        look.addThemeVariants(ButtonVariant.PRIMARY);
        look.setTestId("example-" + example.name().toLowerCase(Locale.ROOT));
        Div offer = new Div(new H3(example.title()), new Paragraph(example.sentence() + "."), look);
        offer.addClassName("kw-shortlists-example");
        return offer;
    }
}
