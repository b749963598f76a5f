package org.keelweigh.ui.visit;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.upload.Upload;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Finding;
import org.keelweigh.report.FieldCode;
import org.keelweigh.report.FieldMerge;
import org.keelweigh.report.FieldResults;
import org.keelweigh.report.FieldResultsReader;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.Documents;
import org.keelweigh.shortlist.Saved;
import org.keelweigh.ui.shell.BoundedUpload;
import org.keelweigh.ui.shell.Undo;
import org.keelweigh.ui.shell.Visitor;

/**
 * Brings the results of a field sheet home: by file, or by a code that is scanned or typed; check by check, with a choice where
 * both sides differ.
 */
final class FieldReturn extends Section {

    private final transient VisitDesk desk;
    private final TextField code = new TextField("Or the letters of the code");
    private final Paragraph answer = new Paragraph();
    private final Div choices = new Div();

    FieldReturn(VisitDesk desk) {
        this.desk = desk;
        addClassName("kw-sheet");
        answer.getElement().setAttribute("role", "status");
        answer.setTestId("field-answer");
        choices.addClassName("kw-stack");
        Upload upload = new Upload();
        upload.setUploadHandler(new BoundedUpload<>(FieldResultsReader.MOST_BYTES, bytes -> bytes, this::take));
        upload.setUploadButton(new Button("Choose the results file"));
        upload.setDropAllowed(false);
        upload.getElement().setProperty("accept", "application/json,.json");
        upload.addAllFinishedListener(event -> upload.clearFileList());
        upload.setId("field-results");
        code.setWidthFull();
        code.setTestId("field-code");
        Button enter = new Button("Take the code", click -> takeCode(code.getValue()));
        enter.setTestId("take-code");
        add(
                new H2("Results of a field sheet"),
                new Paragraph(
                        "What only the sheet knows is taken. Where somebody changed the same check here meanwhile, you "
                                + "choose."),
                upload,
                new CodeScanner(this::takeScanned),
                code,
                enter,
                answer,
                choices);
    }

    /** Takes a file of results. */
    void take(byte[] bytes) {
        show(new FieldResultsReader(desk.inspection()).read(bytes, desk.facts()));
    }

    /** Takes a code that was scanned, as if it had been typed. */
    void takeScanned(String scanned) {
        code.setValue(scanned);
        takeCode(scanned);
    }

    private void takeCode(String code) {
        show(new FieldCode(desk.inspection()).read(code, desk.candidate()));
    }

    private void show(FieldResults.Reading reading) {
        choices.removeAll();
        switch (reading) {
            case FieldResults.Reading.Refused refused -> answer.setText(refused.sentence());
            case FieldResults.Reading.Readable readable -> {
                StringBuilder words = new StringBuilder();
                readable.results().boats().forEach(boat -> words.append(merge(boat))
                        .append(' '));
                answer.setText(words.toString().strip());
            }
        }
    }

    private String merge(FieldResults.BoatResults results) {
        Candidate boat = desk.facts().candidate(results.boat()).orElseThrow();
        FieldMerge merge =
                FieldMerge.of(base(boat, results.version()), boat.data().findings(), results.findings());
        String name = boat.data().name();
        if (!merge.taken().isEmpty()) {
            List<Finding> before = boat.data().findings();
            CandidateData data = boat.data();
            for (Finding finding : merge.taken()) {
                data = data.withFinding(finding);
            }
            if (!saved(boat, data)) {
                return name + " was changed at the same moment; please give the file again.";
            }
            Undo.offer("Results of the sheet taken.", () -> desk.facts()
                    .candidate(boat.id())
                    .ifPresent(now -> saved(now, now.data().withFindings(before))));
        }
        merge.choices().forEach(choice -> choices.add(choice(boat, choice)));
        return name + ": " + merge.taken().size() + " taken, " + merge.same() + " the same as here, "
                + merge.choices().size() + " to choose.";
    }

    private boolean saved(Candidate seen, CandidateData data) {
        Saved<Candidate> saved =
                desk.editing().save(new Candidate(seen.id(), seen.shortlist(), seen.version(), data), Visitor.name());
        desk.editing().facts(seen.shortlist()).ifPresent(desk::hear);
        return switch (saved) {
            case Saved.Done<Candidate> done -> true;
            case Saved.Merged<Candidate> merged -> true;
            case Saved.Clashed<Candidate> clashed -> false;
            case Saved.Gone<Candidate> gone -> false;
        };
    }

    /** Tells what was known of a boat when its sheet was made. */
    private List<Finding> base(Candidate boat, long version) {
        return desk.editing().history(boat.id()).stream()
                .filter(change -> change.version() == version)
                .findFirst()
                .map(change ->
                        Documents.read(change.document(), CandidateData.class).findings())
                .orElse(List.of());
    }

    private Div choice(Candidate boat, FieldMerge.Choice choice) {
        String title = desk.inspection().check(choice.check()).map(Check::title).orElse(choice.check());
        Div box = new Div(new H3(boat.data().name() + ": " + title));
        box.addClassName("kw-choice");
        Button here = new Button("Keep what is here: " + words(choice.here()), click -> choices.remove(box));
        Button sheet = new Button("Take the sheet: " + words(choice.sheet()), click -> {
            Optional<Candidate> now = desk.facts().candidate(boat.id());
            if (now.isPresent() && saved(now.get(), now.get().data().withFinding(choice.sheet()))) {
                choices.remove(box);
            } else {
                answer.setText("This was not saved: somebody changed the boat at the same moment. Please try again.");
            }
        });
        here.setTestId("mine-" + choice.check());
        sheet.setTestId("theirs-" + choice.check());
        Div buttons = new Div(here, sheet);
        buttons.addClassName("kw-row");
        box.add(buttons);
        return box;
    }

    private static String words(@Nullable Finding finding) {
        return finding == null
                ? "not checked"
                : finding.outcome().label() + (finding.note() == null ? "" : " (" + finding.note() + ")");
    }
}
