package org.keelweigh.ui.shell;

import com.vaadin.flow.component.textfield.TextField;

/** Asks who sits at this browser; the name signs their edits. */
public final class VisitorField extends TextField {

    private static final int LONGEST = 80;

    /** Makes the field with the name that was said before. */
    public VisitorField() {
        super("Who are you?");
        setTestId("visitor");
        setMaxLength(LONGEST);
        setWidth("min(100%, 24rem)");
        setHelperText("Your name stands beside what you change, so that others know");
        setValue(Visitor.said().orElse(""));
        addValueChangeListener(change -> {
            if (change.isFromClient()) {
                Visitor.rename(change.getValue());
            }
        });
    }
}
