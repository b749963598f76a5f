package org.keelweigh.ui.compare;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.condition.ListingFacts;
import org.keelweigh.shortlist.Bound;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.format.Quantity;
import org.keelweigh.ui.format.QuantityField;

/** Puts a boat on the shortlist with the least that can be known: a name, a kind and, perhaps, a price. */
class AddBoat extends Div {

    private static final int LONGEST_NAME = 80;

    private final TextField name = new TextField("What you call it");
    private final Select<BoatKind> kind = new Select<>();
    private final QuantityField price;
    private final transient Consumer<CandidateData> add;

    AddBoat(Display display, Consumer<CandidateData> add) {
        this.add = add;
        addClassName("kw-add-boat");
        name.setTestId("boat-name");
        name.setMaxLength(LONGEST_NAME);
        name.setRequiredIndicatorVisible(true);
        kind.setLabel("Kind");
        kind.setItems(BoatKind.values());
        kind.setItemLabelGenerator(BoatKind::label);
        kind.setValue(BoatKind.SIT_ON_TOP);
        kind.setTestId("boat-kind");
        price = new QuantityField("Asking price, if you know it", Quantity.MONEY, Bound.MONEY, display);
        price.setTestId("boat-price");
        Button button = new Button("Add a boat", click -> submit());
        button.setTestId("add-boat");
        add(name, kind, price, button);
    }

    private void submit() {
        boolean nameless = name.getValue().isBlank();
        name.setErrorMessage("Give it a name you will know it by.");
        name.setInvalid(nameless);
        if (!nameless && !price.isInvalid()) {
            add.accept(CandidateData.of(name.getValue().strip(), kind.getValue())
                    .withListing(new ListingFacts(
                            price.si().orElse(null), null, null, null, new TreeMap<>(), new TreeMap<>())));
        }
    }
}
