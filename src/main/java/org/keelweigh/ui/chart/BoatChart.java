package org.keelweigh.ui.chart;

import com.vaadin.flow.component.ComponentEventListener;
import com.vaadin.flow.shared.Registration;

/**
 * A chart with marks that belong to boats; choosing one by pointer or by the enter key is an event.
 *
 * @param <D> what this chart draws
 */
public abstract class BoatChart<D extends ChartData> extends Chart<D> {

    /** Creates the figure around a drawing of the given element name. */
    protected BoatChart(String elementName, String title) {
        super(elementName, title);
    }

    public Registration addBoatSelectedListener(ComponentEventListener<BoatSelectedEvent> listener) {
        return addListener(BoatSelectedEvent.class, listener);
    }
}
