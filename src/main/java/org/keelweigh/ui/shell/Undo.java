package org.keelweigh.ui.shell;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.notification.Notification;

/** Offers to take something back after it was done, instead of asking before. */
public final class Undo {

    private static final int OFFERED_MS = 12_000;

    private Undo() {}

    /** Says what was done and offers to undo it. */
    public static void offer(String done, Runnable undo) {
        Notification note = new Notification();
        Button button = new Button("Undo", click -> {
            undo.run();
            note.close();
        });
        Div line = new Div(new Span(done), button);
        line.addClassName("kw-undo");
        note.add(line);
        note.setPosition(Notification.Position.BOTTOM_CENTER);
        note.setDuration(OFFERED_MS);
        note.open();
    }
}
