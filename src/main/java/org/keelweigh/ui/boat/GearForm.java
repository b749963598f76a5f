package org.keelweigh.ui.boat;

import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.IntegerField;
import java.util.Map;
import java.util.TreeMap;

/** What comes with the boat, with counts. */
final class GearForm extends Div implements Refreshing {

    private static final int MOST = 20;

    private final transient BoatDesk desk;
    private final Map<String, Checkbox> boxes = new TreeMap<>();
    private final Map<String, IntegerField> counts = new TreeMap<>();

    GearForm(BoatDesk desk) {
        this.desk = desk;
        addClassName("kw-boat-gear");
        GearKind.all().forEach(this::add);
    }

    @Override
    public void refresh() {
        Map<String, Integer> included = desk.data().listing().included();
        boxes.forEach((code, box) -> {
            Integer count = included.get(code);
            box.setValue(count != null);
            counts.get(code).setVisible(count != null);
            counts.get(code).setValue(count == null ? Integer.valueOf(1) : count);
        });
    }

    private void add(GearKind gear) {
        Checkbox box = new Checkbox(Plain.capital(gear.words()));
        box.setTestId("gear-" + gear.code());
        box.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                desk.set(path(gear), Boolean.TRUE.equals(change.getValue()) ? 1 : null);
            }
        });
        IntegerField count = new IntegerField();
        count.setAriaLabel("How many: " + gear.words());
        count.setMin(1);
        count.setMax(MOST);
        count.setStepButtonsVisible(true);
        count.addValueChangeListener(change -> {
            Integer typed = change.getValue();
            if (change.isFromClient() && typed != null && typed >= 1 && typed <= MOST) {
                desk.set(path(gear), typed);
            }
        });
        boxes.put(gear.code(), box);
        counts.put(gear.code(), count);
        add(Plain.row("kw-boat-gear-line", box, count));
    }

    private static String path(GearKind gear) {
        return "listing.included." + gear.code();
    }
}
