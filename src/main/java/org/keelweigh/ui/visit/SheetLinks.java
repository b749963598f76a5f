package org.keelweigh.ui.visit;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.appraisal.VisitRoute;
import org.keelweigh.condition.Check;
import org.keelweigh.report.FieldSheet;
import org.keelweigh.ui.shell.Downloads;

/** The field sheet, for a place without a network. */
final class SheetLinks extends Section {

    private static final String HTML = "text/html;charset=utf-8";

    private final transient VisitDesk desk;

    SheetLinks(VisitDesk desk) {
        this.desk = desk;
        addClassName("kw-sheet");
        Div links = new Div();
        links.addClassName("kw-row");
        links.add(Downloads.link(
                "Field sheet for this boat", Downloads.fileName("field-sheet", desk.name(), "html"), HTML, this::one));
        if (desk.facts().candidates().size() > 1) {
            links.add(Downloads.link("Field sheet for all boats", "field-sheet-all-boats.html", HTML, this::all));
        }
        add(
                new H2("No signal there?"),
                new Paragraph(
                        "Take the checks along as one file. It works in the phone's browser without a network, keeps what "
                                + "you tap, and prints on A4 or Letter. Bring the results back under “Results”."),
                links);
    }

    private byte[] one() {
        return sheet(desk.name(), List.of(desk.report()));
    }

    private byte[] all() {
        return sheet(desk.facts().shortlist().data().name(), desk.measured().boats());
    }

    private byte[] sheet(String title, List<BoatReport> boats) {
        List<FieldSheet.Stop> stops = boats.stream()
                .map(boat -> new FieldSheet.Stop(boat.candidate(), boat.boat(), checks(boat)))
                .toList();
        return FieldSheet.of(title, stops, desk.inspection(), desk.now()).getBytes(StandardCharsets.UTF_8);
    }

    /** The order of the walk as planned here; checks that were made already come last. */
    private List<Check> checks(BoatReport boat) {
        return VisitRoute.of(boat.condition(), desk.minutes(), desk.order(), desk.outlooks(boat.id()))
                .all(desk.guide().checks(boat.boat()));
    }
}
