package org.keelweigh.ui.visit;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.function.Function;
import org.keelweigh.report.BillOfSale;
import org.keelweigh.report.PaperPdf;
import org.keelweigh.report.VisitProof;
import org.keelweigh.report.VisitRecord;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.UnitSystem;
import org.keelweigh.ui.shell.Downloads;

/** The papers about a visit, to read and to print. */
final class PaperLinks extends Section {

    private static final String HTML = "text/html;charset=utf-8";
    private static final String PDF = "application/pdf";

    private final transient VisitDesk desk;

    PaperLinks(VisitDesk desk) {
        this.desk = desk;
        addClassName("kw-sheet");
        Div links = new Div();
        links.addClassName("kw-row");
        both(links, "Visit record", "visit-record", VisitRecord::of);
        both(links, "Bill of sale, draft", "bill-of-sale", BillOfSale::of);
        add(
                new H2("Papers"),
                new Paragraph(
                        "The bill of sale is a draft for both sides to read and change; local law decides what it needs."),
                links);
    }

    private void both(Div links, String title, String file, Function<VisitProof, String> paper) {
        links.add(
                Downloads.link(
                        title + " (page)", Downloads.fileName(file, desk.name(), "html"), HTML, () -> paper.apply(
                                        proof())
                                .getBytes(StandardCharsets.UTF_8)),
                Downloads.link(
                        title + " (PDF)",
                        Downloads.fileName(file, desk.name(), "pdf"),
                        PDF,
                        () -> PaperPdf.of(paper.apply(proof()), size())));
    }

    /** Where people measure in feet they also print on Letter. */
    private PaperPdf.Paper size() {
        return desk.facts().shortlist().data().units() == UnitSystem.US ? PaperPdf.Paper.LETTER : PaperPdf.Paper.A4;
    }

    private VisitProof proof() {
        return new VisitProof(
                desk.report(),
                desk.notes(),
                desk.checks(),
                desk.guide().questions(desk.report().boat()),
                desk.photos(),
                desk.album()::picture,
                Display.of(desk.facts().shortlist()),
                desk.now(),
                ZoneId.systemDefault());
    }
}
