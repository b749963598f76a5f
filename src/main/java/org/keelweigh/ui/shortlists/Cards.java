package org.keelweigh.ui.shortlists;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.keelweigh.appraisal.AppraisalService;
import org.keelweigh.exchange.ZipExport;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.ui.shell.Background;

/** A card for each shortlist. Who leads is measured after the page has come up, card by card. */
final class Cards extends Div {

    private final transient ShortlistEditing editing;
    private final transient ZipExport archives;
    private final transient AppraisalService appraisal;
    private final transient Background background;
    private final transient Clock clock;
    private final transient Runnable anew;
    private final List<ShortlistCard> cards = new ArrayList<>();

    Cards(
            ShortlistEditing editing,
            ZipExport archives,
            AppraisalService appraisal,
            Background background,
            Clock clock,
            Runnable anew) {
        this.editing = editing;
        this.archives = archives;
        this.appraisal = appraisal;
        this.background = background;
        this.clock = clock;
        this.anew = anew;
        addClassName("kw-shortlists-cards");
    }

    void fill(List<Shortlist> shortlists) {
        for (Shortlist each : shortlists) {
            editing.facts(each.id()).ifPresent(facts -> {
                ShortlistCard card = new ShortlistCard(editing, archives, facts, clock, anew);
                cards.add(card);
                add(card);
            });
        }
    }

    @Override
    protected void onAttach(AttachEvent event) {
        UI ui = event.getUI();
        List<ShortlistCard> waiting = List.copyOf(cards);
        background.run(() -> waiting.forEach(card -> {
            String leads = LeadSentence.of(appraisal, card.facts());
            ui.access(() -> card.tell(leads));
        }));
    }
}
