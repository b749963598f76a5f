package org.keelweigh.ui.settings;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;

/** Asks for the colours. */
final class ColourField extends RadioButtonGroup<ColourScheme> {

    ColourField() {
        super("Colours of the pages");
        setTestId("colours");
        setItems(ColourScheme.values());
        setItemLabelGenerator(ColourScheme::label);
        setHelperText("Kept in this browser");
        addValueChangeListener(change -> {
            if (change.isFromClient() && change.getValue() != null) {
                getUI().ifPresent(ui -> ColourMemory.keep(ui, change.getValue()));
            }
        });
    }

    @Override
    protected void onAttach(AttachEvent event) {
        super.onAttach(event);
        setValue(ColourMemory.current(event.getUI()));
    }
}
