package org.keelweigh.ui.trip;

import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.Route;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.keelweigh.appraisal.AppraisalService;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.FactsChanged;
import org.keelweigh.shortlist.Person;
import org.keelweigh.shortlist.PersonId;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.ui.shell.Background;
import org.keelweigh.ui.shell.FactsFeed;
import org.keelweigh.ui.shell.Places;
import org.keelweigh.ui.shell.ShortlistPage;

/** How, where and by whom the boats will be used. */
@Route(Places.TRIP)
@StyleSheet("css/trip.css")
public class TripView extends ShortlistPage {

    private final transient AppraisalService appraisal;
    private final transient Background background;
    private transient @Nullable Desk desk;
    private @Nullable Sections sections;

    TripView(ShortlistEditing editing, FactsFeed feed, AppraisalService appraisal, Background background) {
        super(editing, feed);
        this.appraisal = appraisal;
        this.background = background;
        addClassName("kw-trip");
    }

    @Override
    protected String pageName() {
        return "Trip and people";
    }

    @Override
    protected void show(Facts facts) {
        desk = new Desk(editing(), appraisal, facts);
        sections = new Sections(desk, background, () -> facts().ifPresent(this::show));
        removeAll();
        add(
                new H1("Trip and people"),
                new Paragraph(
                        "Say what you know and leave the rest empty. What is assumed instead stands below each field; "
                                + "every edit is saved at once."));
        add(sections);
    }

    /** Fields that somebody may be typing in stay; only a change of units or of who is there shows the page anew. */
    @Override
    protected void changed(Facts facts, FactsChanged change) {
        if (desk == null || sections == null || !sameFrame(desk.facts(), facts)) {
            show(facts);
        } else {
            desk.see(facts);
            sections.refresh();
        }
    }

    private static boolean sameFrame(Facts one, Facts other) {
        return one.shortlist().data().units() == other.shortlist().data().units()
                && one.shortlist()
                        .data()
                        .currency()
                        .equals(other.shortlist().data().currency())
                && one.shortlist().data().trip().launches().size()
                        == other.shortlist().data().trip().launches().size()
                && ids(one).equals(ids(other));
    }

    private static List<PersonId> ids(Facts facts) {
        return facts.people().stream().map(Person::id).toList();
    }

    /** The sections of the page. */
    private static final class Sections extends Div {

        private final transient List<Fields> fields;

        Sections(Desk desk, Background background, Runnable anew) {
            addClassName("kw-stack");
            Fields trip = Fields.ofTrip(desk);
            PeopleSection people = new PeopleSection(desk, anew);
            add(
                    new UnitsSection(desk, trip, anew),
                    people,
                    new WaterSection(trip),
                    new LaunchSection(desk, trip, anew),
                    new TransportSection(desk, trip),
                    new MoneySection(desk, trip),
                    new UnknownsSection(desk, background));
            fields = Stream.concat(Stream.of(trip), people.fields().stream()).toList();
        }

        void refresh() {
            fields.forEach(Fields::refresh);
        }
    }
}
