package org.keelweigh.ui.weigh;

import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import org.keelweigh.shortlist.Certainty;

/** Asks how sure somebody is of the weights they gave. */
final class HowSure extends Section {

    HowSure(Scales scales) {
        addClassName("kw-sheet");
        RadioButtonGroup<Certainty> group = new RadioButtonGroup<>("How sure are you of these weights?");
        group.setItems(Certainty.values());
        group.setItemLabelGenerator(Certainty::label);
        group.setValue(scales.me().orElseThrow().data().certainty());
        group.setTestId("certainty");
        group.addValueChangeListener(change -> {
            if (change.isFromClient() && change.getValue() != null) {
                scales.edit(data -> data.withCertainty(change.getValue()));
            }
        });
        Paragraph soft = new Paragraph(
                "The less sure you are, the more other weighings near yours are tried before a boat is said to lead.");
        soft.addClassName("kw-soft");
        add(new H2("3. How sure"), group, soft);
    }
}
