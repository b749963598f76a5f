package org.keelweigh.ui.compare;

import com.vaadin.flow.component.notification.Notification;
import java.util.stream.Collectors;
import org.keelweigh.shortlist.Clash;
import org.keelweigh.shortlist.Saved;

/** Says what came of saving where it was not simply saved. */
final class SaveNote {

    private static final int SHOWN_MS = 10_000;

    private SaveNote() {}

    /** Tells whether the edit was kept, and says so where somebody else had a hand in it. */
    static boolean kept(Saved<?> saved, String mine) {
        return switch (saved) {
            case Saved.Done<?> done -> true;
            case Saved.Merged<?> merged -> {
                say(merged.by() + " changed something here at the same time; both changes are kept.");
                yield true;
            }
            case Saved.Clashed<?> clashed -> {
                String fields =
                        clashed.clashes().stream().map(Clash::field).distinct().collect(Collectors.joining(", "));
                say("Not saved: " + clashed.by() + " changed the same at the same time (" + fields + "). Yours was: "
                        + mine + ".");
                yield false;
            }
            case Saved.Gone<?> gone -> {
                say("Not saved: it was removed meanwhile. Yours was: " + mine + ".");
                yield false;
            }
        };
    }

    private static void say(String sentence) {
        Notification.show(sentence, SHOWN_MS, Notification.Position.BOTTOM_CENTER);
    }
}
