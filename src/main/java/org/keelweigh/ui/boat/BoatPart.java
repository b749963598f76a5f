package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Div;

/** One section of a boat's page. It is built once and then only changes what an edit changed. */
abstract class BoatPart extends Div {

    private final transient BoatDesk desk;

    BoatPart(BoatDesk desk) {
        this.desk = desk;
        addClassName("kw-stack");
    }

    /** Tells what the section works with. */
    final BoatDesk desk() {
        return desk;
    }

    /** Shows what was just saved, while what follows from it is still being worked out. */
    void saved() {}

    /** Shows the figures as they are after an edit, leaving everything else where it is. */
    abstract void refresh();
}
