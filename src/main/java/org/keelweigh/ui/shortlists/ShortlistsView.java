package org.keelweigh.ui.shortlists;

import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.router.AfterNavigationEvent;
import com.vaadin.flow.router.AfterNavigationObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.time.Clock;
import java.util.List;
import org.keelweigh.appraisal.AppraisalService;
import org.keelweigh.demo.Examples;
import org.keelweigh.exchange.ImportService;
import org.keelweigh.exchange.ShortlistImport;
import org.keelweigh.exchange.ZipExport;
import org.keelweigh.exchange.ZipImport;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.ui.shell.Background;
import org.keelweigh.ui.shell.VisitorField;

/** All shortlists, the example, and starting one's own. */
@Route("")
@PageTitle("Shortlists · Keelweigh")
@StyleSheet("css/shortlists.css")
public class ShortlistsView extends Section implements AfterNavigationObserver {

    private final transient ShortlistEditing editing;
    private final transient AppraisalService appraisal;
    private final transient Examples examples;
    private final transient ShortlistImport reading;
    private final transient ImportService importing;
    private final transient ZipImport archives;
    private final transient ZipExport exporting;
    private final transient Background background;
    private final transient Clock clock;

    ShortlistsView(
            ShortlistEditing editing,
            AppraisalService appraisal,
            Examples examples,
            ShortlistImport reading,
            ImportService importing,
            ZipImport archives,
            ZipExport exporting,
            Background background,
            Clock clock) {
        this.editing = editing;
        this.appraisal = appraisal;
        this.examples = examples;
        this.reading = reading;
        this.importing = importing;
        this.archives = archives;
        this.exporting = exporting;
        this.background = background;
        this.clock = clock;
        addClassNames("kw-page", "kw-shortlists");
    }

    @Override
    public void afterNavigation(AfterNavigationEvent event) {
        show();
    }

    private void show() {
        removeAll();
        List<Shortlist> all = editing.shortlists();
        if (all.isEmpty()) {
            showFirstStart();
        } else {
            showAll(all);
        }
        add(sheet("Import a file", new ImportPart(reading, importing, archives)));
        add(sheet("You", new VisitorField()));
    }

    private void showFirstStart() {
        Paragraph lead = new Paragraph(
                "Put two or more used boats side by side. You get one answer you can defend: which boat, at what "
                        + "price, what to check before paying, and what it will cost and weigh on you for five years.");
        lead.addClassName("kw-shortlists-lead");
        add(new H1("Which boat, at what price, and what to check first"), lead);
        add(sheet("Look at the example", new ExamplePart(examples)));
        add(sheet("Start your own", new StartPart(editing)));
    }

    private void showAll(List<Shortlist> all) {
        add(new H1("Shortlists"));
        Cards cards = new Cards(editing, exporting, appraisal, background, clock, this::show);
        cards.fill(all);
        add(cards);
        add(sheet("Start another", new StartPart(editing)));
        add(new NativeDetails("Look at the example", new ExamplePart(examples)));
    }

    private static Section sheet(String heading, Div part) {
        Section sheet = new Section(new H2(heading), part);
        sheet.addClassName("kw-sheet");
        return sheet;
    }

    private static Section sheet(String heading, VisitorField field) {
        return sheet(heading, new Div(field));
    }
}
