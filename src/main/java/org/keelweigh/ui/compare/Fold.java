package org.keelweigh.ui.compare;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeDetails;

/** A section with a heading that can be folded away; on a phone it starts folded. */
class Fold extends NativeDetails {

    private static final int PHONE_PX = 700;

    private final H2 heading;
    private final Div body = new Div();
    private boolean placed;

    Fold(String heading) {
        this.heading = new H2(heading);
        setSummary(this.heading);
        body.addClassName("kw-fold-body");
        setContent(body);
        setOpen(true);
        addClassNames("kw-sheet", "kw-fold");
    }

    final void rename(String other) {
        heading.setText(other);
    }

    final void put(Component... components) {
        body.add(components);
    }

    /** Only the first look decides: afterwards it is as people leave it. */
    @Override
    protected void onAttach(AttachEvent event) {
        if (!placed) {
            placed = true;
            event.getUI().getPage().retrieveExtendedClientDetails(details -> {
                int width = details.getWindowInnerWidth();
                if (width > 0 && width < PHONE_PX) {
                    setOpen(false);
                }
            });
        }
    }
}
