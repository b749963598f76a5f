package org.keelweigh.ui.chart;

import com.vaadin.flow.component.ComponentEvent;
import com.vaadin.flow.component.DomEvent;
import com.vaadin.flow.component.EventData;

/** Somebody chose a boat in a drawing. The id comes from the browser: look it up, do not trust it. */
@DomEvent("boat-selected")
public class BoatSelectedEvent extends ComponentEvent<BoatChart<?>> {

    private final String boatId;

    public BoatSelectedEvent(BoatChart<?> source, boolean fromClient, @EventData("event.detail.id") String boatId) {
        super(source, fromClient);
        this.boatId = boatId;
    }

    public String boatId() {
        return boatId;
    }
}
