package org.keelweigh.ui.shortlists;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.ui.shell.Places;

/** All shortlists, the example, and starting one's own. */
@Route("")
@PageTitle("Shortlists · Keelweigh")
public class ShortlistsView extends Section {

    ShortlistsView(ShortlistEditing editing) {
        addClassName("kw-page");
        add(new H1("Which boat, at what price, and what to check first"));
        add(new Paragraph("Put two or more used boats side by side and get one answer you can defend."));
        UnorderedList list = new UnorderedList();
        editing.shortlists()
                .forEach(each -> list.add(new ListItem(
                        new Anchor(Places.compare(each.id()), each.data().name()))));
        add(list);
    }
}
