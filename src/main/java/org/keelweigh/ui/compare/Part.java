package org.keelweigh.ui.compare;

/** A part of the page that shows a glance, again and again without being built anew. */
interface Part {

    void show(Glance glance);
}
