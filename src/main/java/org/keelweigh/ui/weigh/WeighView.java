package org.keelweigh.ui.weigh;

import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.Route;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.keelweigh.appraisal.AppraisalService;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.FactsChanged;
import org.keelweigh.shortlist.Person;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.ui.shell.FactsFeed;
import org.keelweigh.ui.shell.Places;
import org.keelweigh.ui.shell.ShortlistPage;

/** What matters to each person who decides: blind until all are done, then side by side. */
@Route(Places.WEIGH)
@StyleSheet("css/weigh.css")
public class WeighView extends ShortlistPage {

    private final transient AppraisalService appraisal;
    private transient @Nullable Scales scales;

    WeighView(ShortlistEditing editing, FactsFeed feed, AppraisalService appraisal) {
        super(editing, feed);
        this.appraisal = appraisal;
        addClassName("kw-weigh");
    }

    @Override
    protected String pageName() {
        return "Weigh";
    }

    @Override
    protected void show(Facts facts) {
        Scales now = new Scales(editing(), facts, appraisal.measure(facts));
        scales = now;
        removeAll();
        add(new H1("What matters to you"));
        add(new Paragraph(
                "Weights say how much a step from worst to best is worth to you, one criterion against the others."));
        if (now.deciders().isEmpty()) {
            add(new FirstDecider(editing(), facts, this::anew));
            return;
        }
        add(new WhoIsHere(now, this::anew));
        if (now.revealed()) {
            add(new Revealed(now, this::anew));
        } else if (now.me().isPresent()) {
            showMine(now);
        }
    }

    private void showMine(Scales now) {
        boolean alone = now.deciders().size() == 1;
        if (!alone && now.me().orElseThrow().data().weighed()) {
            add(new Waiting(now, this::anew));
            return;
        }
        Swings swings = new Swings(now);
        add(new StartFrom(now, this::anew), swings, new HowSure(now));
        if (!alone) {
            add(new Done(now, this::anew));
        }
    }

    private void anew() {
        facts().ifPresent(this::show);
    }

    /** My own sliders stay as they are; who is done, who decides and what the boats are shows the page anew. */
    @Override
    protected void changed(Facts facts, FactsChanged change) {
        if (scales == null || !sameForMe(scales, facts)) {
            show(facts);
        }
    }

    private static boolean sameForMe(Scales seen, Facts now) {
        return seen.facts().shortlist().equals(now.shortlist())
                && seen.facts().candidates().equals(now.candidates())
                && standing(seen.facts()).equals(standing(now))
                && seen.me().equals(seen.me().flatMap(me -> now.person(me.id())));
    }

    private static List<String> standing(Facts facts) {
        return facts.people().stream().map(WeighView::standing).toList();
    }

    private static String standing(Person person) {
        return person.id()
                + person.data().name()
                + person.data().decides()
                + person.data().weighed();
    }
}
