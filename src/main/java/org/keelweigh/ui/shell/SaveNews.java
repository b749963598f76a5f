package org.keelweigh.ui.shell;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.notification.Notification;
import org.keelweigh.shortlist.ClashWords;
import org.keelweigh.shortlist.Saved;

/** Tells a person in a sentence when an edit met somebody else's. Nothing they typed is lost without their say. */
public final class SaveNews {

    private static final int READ_MS = 6000;
    private static final int UNTIL_CLOSED = 0;

    private SaveNews() {}

    /**
     * Tells what came of saving; says nothing when it simply was saved.
     *
     * @param saved what came of it
     * @param words says where two edits met
     * @param again saves the same edit over what stands now, bringing back what was deleted
     */
    public static void tell(Saved<?> saved, ClashWords words, Runnable again) {
        switch (saved) {
            case Saved.Done<?> done -> {}
            case Saved.Merged<?> merged ->
                Notification.show(
                        merged.by() + " changed something else here meanwhile. Both edits are kept.",
                        READ_MS,
                        Notification.Position.BOTTOM_CENTER);
            case Saved.Clashed<?> clashed ->
                ask(words.of(clashed.by(), clashed.clashes()), "Use mine", "Keep theirs", again);
            case Saved.Gone<?> gone ->
                ask(
                        "This was deleted meanwhile, so your edit was not saved.",
                        "Bring it back with my edit",
                        "Leave it deleted",
                        again);
        }
    }

    private static void ask(String sentence, String yes, String no, Runnable again) {
        Notification note = new Notification();
        Button take = new Button(yes, click -> {
            note.close();
            again.run();
        });
        Button leave = new Button(no, click -> note.close());
        Div line = new Div(new Span(sentence), take, leave);
        line.addClassName("kw-undo");
        note.add(line);
        note.setPosition(Notification.Position.MIDDLE);
        note.setDuration(UNTIL_CLOSED);
        note.open();
    }
}
