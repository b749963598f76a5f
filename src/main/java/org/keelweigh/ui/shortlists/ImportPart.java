package org.keelweigh.ui.shortlists;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Code;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.upload.Upload;
import org.keelweigh.exchange.ImportProblem;
import org.keelweigh.exchange.ImportResult;
import org.keelweigh.exchange.ImportService;
import org.keelweigh.exchange.ShortlistDocument;
import org.keelweigh.exchange.ShortlistImport;
import org.keelweigh.exchange.ZipImport;
import org.keelweigh.shortlist.Doubt;
import org.keelweigh.ui.shell.BoundedUpload;
import org.keelweigh.ui.shell.Places;
import org.keelweigh.ui.shell.Visitor;

/** Takes in an exported shortlist; a file with anything wrong in it changes nothing. */
final class ImportPart extends Div {

    private final transient ShortlistImport reading;
    private final transient ImportService importing;
    private final transient ZipImport archives;
    private final Div result = new Div();

    ImportPart(ShortlistImport reading, ImportService importing, ZipImport archives) {
        this.reading = reading;
        this.importing = importing;
        this.archives = archives;
        Upload upload = new Upload(new BoundedUpload<>(ZipImport.MOST_BYTES, this::read, Runnable::run));
        upload.getElement().setProperty("accept", ".json,.zip");
        upload.setMaxFiles(1);
        upload.setMaxFileSize(ZipImport.MOST_BYTES);
        upload.setUploadButton(new Button("Choose a file"));
        upload.setDropLabel(new Span("or drop it here"));
        upload.setTestId("import");
        upload.addFileRejectedListener(event -> showRejected(event.getErrorMessage()));
        result.setTestId("import-result");
        result.getElement().setAttribute("aria-live", "polite");
        Paragraph soft = new Paragraph(
                "A shortlist that was exported before, from here or from elsewhere: a file, or an archive with photos.");
        soft.addClassName("kw-soft");
        add(soft, upload, result);
    }

    /** Reads a file by its content before the page is locked; what is left to do there comes back. */
    private Runnable read(byte[] bytes) {
        if (ZipImport.recognises(bytes)) {
            return () -> showStored(archives.read(bytes, Visitor.name()));
        }
        ImportResult read = reading.read(bytes);
        return () -> show("The file", read);
    }

    private void showStored(ZipImport.Outcome outcome) {
        result.removeAll();
        switch (outcome) {
            case ZipImport.Outcome.Refused refused ->
                showProblems("The archive", new ImportResult.Refused(refused.problems()));
            case ZipImport.Outcome.Stored stored ->
                getUI().ifPresent(ui -> ui.navigate(Places.compare(stored.shortlist())));
        }
    }

    private void showRejected(String reason) {
        result.removeAll();
        result.add(new Paragraph("The file was not taken: " + reason));
    }

    private void show(String file, ImportResult read) {
        result.removeAll();
        switch (read) {
            case ImportResult.Refused refused -> showProblems(file, refused);
            case ImportResult.Ready ready when ready.questions().isEmpty() -> store(ready.document());
            case ImportResult.Ready ready -> ask(file, ready);
        }
    }

    private void showProblems(String file, ImportResult.Refused refused) {
        int count = refused.problems().size();
        UnorderedList list = new UnorderedList();
        refused.problems().forEach(each -> list.add(problem(each)));
        result.add(
                new H3("This file cannot be imported"),
                new Paragraph(file + " has " + (count == 1 ? "1 problem" : count + " problems")
                        + ". Nothing was changed here. Mend the lines below and choose the file again."),
                list);
    }

    private static ListItem problem(ImportProblem problem) {
        ListItem item = new ListItem(
                new Span("Line " + problem.line() + (problem.field().isEmpty() ? ": " : ", ")));
        if (!problem.field().isEmpty()) {
            item.add(new Code(problem.field()), new Span(": "));
        }
        item.add(new Span(problem.sentence()));
        return item;
    }

    private void ask(String file, ImportResult.Ready ready) {
        UnorderedList list = new UnorderedList();
        ready.questions().forEach(each -> list.add(question(each)));
        Button yes = new Button("Import it as it is", click -> store(ready.document()));
        yes.setTestId("import-anyway");
        Button no = new Button("Leave it", click -> result.removeAll());
        Div line = new Div(yes, no);
        line.addClassName("kw-row");
        result.add(
                new H3("Please look at these again"),
                new Paragraph(file + " can be imported, but this looks unusual:"),
                list,
                line);
    }

    private static ListItem question(Doubt doubt) {
        return new ListItem(new Code(doubt.field()), new Span(": " + doubt.sentence()));
    }

    private void store(ShortlistDocument document) {
        var id = importing.importInto(document, Visitor.name());
        getUI().ifPresent(ui -> ui.navigate(Places.compare(id)));
    }
}
