package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Span;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.Change;
import org.keelweigh.shortlist.ChangeLog;
import org.keelweigh.shortlist.Documents;
import org.keelweigh.ui.shell.Undo;

/** What changed about the boat, when and by whom, with the way back to each earlier state. */
final class HistoryPart extends BoatPart {

    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
    private static final int MOST_SHOWN = 200;

    private final OrderedList entries = new OrderedList();

    HistoryPart(BoatDesk desk) {
        super(desk);
        entries.addClassName("kw-boat-history");
        entries.setTestId("history");
        add(
                Plain.soft(
                        "Every edit is kept. Going back makes an earlier state the present one; what came after it stays here too."),
                entries);
        refresh();
    }

    @Override
    void refresh() {
        entries.removeAll();
        List<Change> changes = desk().editing().history(desk().candidate().id());
        ChangeLog log = desk().changeLog();
        int shown = Math.min(MOST_SHOWN, changes.size());
        for (int i = 0; i < shown; i++) {
            entries.add(entry(changes, i, log));
        }
        if (shown < changes.size()) {
            entries.add(new ListItem("… and " + (changes.size() - shown) + " older edits."));
        }
    }

    private ListItem entry(List<Change> changes, int at, ChangeLog log) {
        Change change = changes.get(at);
        String when = WHEN.format(change.at().atZone(ZoneId.systemDefault()));
        ListItem item = new ListItem(new Span(when + ", " + change.who() + ":"));
        if (at == changes.size() - 1) {
            item.add(Plain.list(List.of("Put on the list.")));
        } else {
            List<String> sentences = log.between(state(changes.get(at + 1)), state(change));
            item.add(Plain.list(sentences.isEmpty() ? List.of("Saved without a difference.") : sentences));
        }
        if (at > 0) {
            NativeButton back = new NativeButton("Back to this state", click -> goBack(change, when));
            back.getElement().setAttribute("aria-label", "Back to the state of " + when);
            back.setTestId("back-to-" + change.version());
            item.add(back);
        }
        return item;
    }

    private void goBack(Change change, String when) {
        long left = desk().candidate().version();
        desk().returnTo(change.version());
        Undo.offer("The boat is as it was on " + when + ".", () -> desk().returnTo(left));
    }

    private static CandidateData state(Change change) {
        return Documents.read(change.document(), CandidateData.class);
    }
}
