package org.keelweigh.ui.weigh;

import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.select.Select;
import org.keelweigh.shortlist.Person;

/** Asks who sits here and tells how far everybody is, without telling what they said. */
final class WhoIsHere extends Section {

    WhoIsHere(Scales scales, Runnable anew) {
        addClassName("kw-sheet");
        if (scales.deciders().size() == 1) {
            add(new Paragraph(scales.deciders().getFirst().data().name() + " decides alone here."));
            return;
        }
        Select<Person> who = new Select<>();
        who.setLabel("I am");
        who.setTestId("i-am");
        who.setPlaceholder("choose your name");
        who.setItems(scales.deciders());
        who.setItemLabelGenerator(each -> each.data().name());
        scales.me().ifPresent(who::setValue);
        who.addValueChangeListener(change -> {
            if (change.isFromClient() && change.getValue() != null) {
                Scales.iAm(scales.facts().shortlist().id(), change.getValue().id());
                anew.run();
            }
        });
        add(new H2("Who weighs"), who, standing(scales));
        if (!scales.revealed()) {
            Paragraph blind = new Paragraph(
                    "Weigh apart, so that nobody leans on anybody: here each sees their own weights only, until "
                            + "all have said that they are done.");
            blind.addClassName("kw-soft");
            add(blind);
        }
    }

    private static UnorderedList standing(Scales scales) {
        UnorderedList list = new UnorderedList();
        list.addClassName("kw-weigh-standing");
        scales.deciders()
                .forEach(each -> list.add(new ListItem(
                        each.data().name() + (each.data().weighed() ? " is done." : " is still weighing."))));
        return list;
    }
}
