package org.keelweigh.ui.shortlists;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Article;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import java.io.ByteArrayInputStream;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.keelweigh.exchange.ZipExport;
import org.keelweigh.shortlist.Change;
import org.keelweigh.shortlist.ClashWords;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.FieldPath;
import org.keelweigh.shortlist.Saved;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.ui.shell.Places;
import org.keelweigh.ui.shell.SaveNews;
import org.keelweigh.ui.shell.Undo;
import org.keelweigh.ui.shell.Visitor;

/** One shortlist: its boats, who leads, and what can be done with it. */
final class ShortlistCard extends Article {

    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    private final transient ShortlistEditing editing;
    private final transient ZipExport archives;
    private final transient Facts facts;
    private final transient Clock clock;
    private final transient Runnable anew;
    private final Paragraph leads = new Paragraph("Weighing the boats …");

    ShortlistCard(ShortlistEditing editing, ZipExport archives, Facts facts, Clock clock, Runnable anew) {
        this.editing = editing;
        this.archives = archives;
        this.facts = facts;
        this.clock = clock;
        this.anew = anew;
        addClassNames("kw-sheet", "kw-shortlists-card");
        setTestId("card");
        leads.setTestId("leads");
        Paragraph changed = new Paragraph(
                editing.lastChange(facts.shortlist().id()).map(this::when).orElse(""));
        changed.addClassName("kw-soft");
        add(heading(), boats(), leads, changed, actions());
    }

    Facts facts() {
        return facts;
    }

    void tell(String sentence) {
        leads.setText(sentence);
    }

    private H2 heading() {
        Anchor open = new Anchor(Places.compare(facts.shortlist().id()), name());
        open.setRouterIgnore(false);
        return new H2(open);
    }

    private String name() {
        return facts.shortlist().data().name();
    }

    private Paragraph boats() {
        int count = facts.candidates().size();
        String names =
                facts.candidates().stream().map(each -> each.data().name()).collect(Collectors.joining(", "));
        return new Paragraph(count == 0 ? "No boats" : (count == 1 ? "1 boat: " : count + " boats: ") + names);
    }

    private String when(Change change) {
        return "Changed "
                + LocalDateTime.ofInstant(change.at(), clock.getZone()).format(MINUTE) + " by " + change.who();
    }

    private Div actions() {
        Button rename = new Button("Rename", click -> rename());
        rename.setAriaLabel("Rename " + name());
        rename.setTestId("rename");
        Button delete = new Button("Delete", click -> delete());
        delete.setAriaLabel("Delete " + name());
        delete.setTestId("delete");
        Anchor export = new Anchor(DownloadHandler.fromInputStream(event -> download()), "Export as a file");
        export.getElement().setAttribute("aria-label", "Export " + name() + " as a file");
        export.setTestId("export");
        Anchor archive = new Anchor(archive(), "Export with photos");
        archive.getElement().setAttribute("aria-label", "Export " + name() + " with photos");
        archive.setTestId("export-photos");
        Div line = new Div(rename, delete, export, archive);
        line.addClassName("kw-row");
        return line;
    }

    private DownloadResponse download() {
        Facts now = editing.facts(facts.shortlist().id()).orElse(facts);
        byte[] bytes = archives.document(now);
        return new DownloadResponse(
                new ByteArrayInputStream(bytes), fileName(now, "json"), "application/json", bytes.length);
    }

    /** Writes the archive straight to the browser, because it can be large. */
    private DownloadHandler archive() {
        return event -> {
            Facts now = editing.facts(facts.shortlist().id()).orElse(facts);
            event.setFileName(fileName(now, "zip"));
            event.setContentType("application/zip");
            archives.write(now, event.getOutputStream());
        };
    }

    private static String fileName(Facts facts, String ending) {
        String plain = facts.shortlist().data().name().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        String trimmed = plain.replaceAll("^-+|-+$", "");
        return (trimmed.isEmpty() ? "shortlist" : trimmed) + "." + ending;
    }

    private void rename() {
        TextField field = new TextField("Name of the shortlist");
        field.setTestId("new-name");
        field.setValue(name());
        field.setMaxLength(200);
        field.addValueChangeListener(change -> {
            boolean named = !change.getValue().isBlank();
            field.setInvalid(!named);
            field.setErrorMessage(named ? "" : "A name is needed.");
            if (named && change.isFromClient()) {
                save(change.getValue().strip());
            }
        });
        addComponentAsFirst(field);
        field.focus();
    }

    private void save(String name) {
        Shortlist seen = facts.shortlist();
        Shortlist edited = new Shortlist(seen.id(), seen.version(), new FieldPath("name").with(seen.data(), name));
        Saved<Shortlist> saved = editing.save(edited, Visitor.name());
        anew.run();
        SaveNews.tell(saved, new ClashWords(Display.of(seen), UnaryOperator.identity()), () -> {
            editing.restore(seen.id(), Visitor.name());
            editing.facts(seen.id())
                    .map(Facts::shortlist)
                    .ifPresent(now -> editing.save(
                            new Shortlist(now.id(), now.version(), new FieldPath("name").with(now.data(), name)),
                            Visitor.name()));
            anew.run();
        });
    }

    private void delete() {
        editing.delete(facts.shortlist().id(), Visitor.name());
        anew.run();
        Undo.offer("Deleted " + name() + ".", () -> {
            editing.restore(facts.shortlist().id(), Visitor.name());
            anew.run();
        });
    }
}
