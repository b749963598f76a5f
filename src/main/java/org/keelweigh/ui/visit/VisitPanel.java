package org.keelweigh.ui.visit;

/** A part of the visit that hears when facts have changed, by whomever, without losing what is being typed in it. */
interface VisitPanel {

    void refresh();
}
