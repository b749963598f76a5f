package org.keelweigh.exchange;

import java.util.List;
import org.keelweigh.appraisal.Assumption;

/** Writes the whole answer as text to be read on a terminal. */
final class AnswerText {

    private AnswerText() {}

    static String of(WholeAnswer whole) {
        TextPage page = new TextPage();
        page.title(whole.measured().facts().shortlist().data().name(), '=');
        if (whole.measured().boats().isEmpty()) {
            page.say("There are no boats on this shortlist yet.");
        }
        whole.views().forEach(view -> ViewText.write(page, whole, view));
        for (int boat = 0; boat < whole.measured().boats().size(); boat++) {
            BoatText.write(page, whole, boat);
        }
        if (!whole.oneCart().isEmpty()) {
            page.title("One cart for all of them", '-');
            page.say(whole.oneCart());
        }
        assumptions(
                page,
                "Assumed about trip and people",
                whole.measured().situation().assumptions());
        return page.text();
    }

    static void assumptions(TextPage page, String heading, List<Assumption> assumptions) {
        if (!assumptions.isEmpty()) {
            page.say(heading + ":");
            assumptions.forEach(each -> page.item(3, each.sentence()));
        }
    }
}
