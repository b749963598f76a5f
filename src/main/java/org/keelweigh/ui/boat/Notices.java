package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;

/** What the page has to tell about edits of others, in a place that screen readers listen to. */
final class Notices extends Div {

    Notices() {
        addClassName("kw-boat-notices");
        setTestId("boat-notices");
        getElement().setAttribute("role", "status").setAttribute("aria-live", "polite");
    }

    /** Tells something and offers one thing to do about it. */
    void offer(String sentence, String action, Runnable doIt) {
        Div line = line(sentence);
        NativeButton button = new NativeButton(action, click -> {
            remove(line);
            doIt.run();
        });
        button.setTestId("notice-action");
        line.addComponentAtIndex(1, button);
        add(line);
    }

    private Div line(String sentence) {
        Div line = new Div(new Span(sentence));
        line.addClassNames("kw-caution", "kw-row");
        line.add(new NativeButton("Close", click -> remove(line)));
        return line;
    }
}
