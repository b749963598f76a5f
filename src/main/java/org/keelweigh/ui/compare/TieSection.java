package org.keelweigh.ui.compare;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.Comparator;
import java.util.List;
import org.keelweigh.appraisal.PriceTies;
import org.keelweigh.ui.shell.Places;

/** For each boat, the price that would put it level with the best other one. */
class TieSection extends Fold implements Part {

    private final UnorderedList list = new UnorderedList();
    private final Paragraph offer = new Paragraph();

    TieSection() {
        super("At what price it would change");
        list.setId("price-ties");
        Paragraph note = new Paragraph("Everything else as it is, and by these weights:");
        note.addClassName("kw-soft");
        put(note, list, offer);
    }

    @Override
    public void show(Glance glance) {
        list.removeAll();
        List<Integer> order = glance.order();
        PriceTies.of(glance.measured(), glance.perspective()).stream()
                .sorted(Comparator.comparingInt(tie -> order.indexOf(tie.boat())))
                .forEach(tie -> list.add(new ListItem(tie.sentence())));
        offer.removeAll();
        offer.add(new Anchor(Places.offer(glance.shortlist()), "What to offer, and with which arguments"));
    }
}
