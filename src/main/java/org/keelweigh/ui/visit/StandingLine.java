package org.keelweigh.ui.visit;

import com.vaadin.flow.component.html.Paragraph;
import org.keelweigh.appraisal.Standing;

/** The running verdict: how the boat stands among the others, always in sight. */
final class StandingLine extends Paragraph {

    StandingLine() {
        addClassName("kw-standing");
        setTestId("standing");
        getElement().setAttribute("role", "status");
    }

    void show(Standing standing) {
        setText(standing.sentence());
        getElement().setAttribute("data-tone", standing.ruledOut() ? "bad" : standing.leads() ? "good" : "plain");
    }
}
