package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import java.util.List;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.condition.ConditionAssessment;
import org.keelweigh.condition.Progress;
import org.keelweigh.shortlist.Display;

/** How much of the inspection is done, what it found, and what that does to the cost. */
final class InspectionSummary extends Section {

    private static final int MINUTES_PER_HOUR = 60;

    private final transient BoatDesk desk;
    private final Paragraph progress = new Paragraph();
    private final Paragraph money = new Paragraph();
    private final Div bar = Plain.row("kw-boat-bar-fill");
    private final Div ignored = Plain.row("kw-stack");
    private final NativeDetails ignoredFrame = new NativeDetails("What was not counted, and why", ignored);

    InspectionSummary(BoatDesk desk) {
        this.desk = desk;
        addClassNames("kw-sheet", "kw-boat-summary");
        progress.setTestId("inspection-progress");
        money.setTestId("inspection-money");
        Div live = new Div(progress, money);
        live.getElement().setAttribute("aria-live", "polite");
        Div frame = Plain.row("kw-boat-bar", bar);
        frame.getElement().setAttribute("aria-hidden", "true");
        add(live, frame, ignoredFrame);
    }

    void refresh() {
        BoatReport report = desk.report();
        ConditionAssessment condition = report.condition();
        Progress done = condition.progress();
        Display display = desk.display();
        progress.setText(done.made() + " of " + done.applicable() + " checks made; the rest takes "
                + time(done.minutesLeft())
                + ". You have looked at " + display.percent(done.evidenceShare()) + " of the risk: evidence grade "
                + done.grade() + " (A is 85 % or more, D under 50 %).");
        double factor = desk.measured().situation().priceFactor();
        money.setText("Repairs found: "
                + display.money(condition.knownRepairs().mean() * factor) + " on average"
                + ". Still hidden: " + display.money(report.unseenRepairs()) + " on average. Cost over "
                + report.cost().horizonYears() + " years: "
                + display.money(report.cost().presentValue()) + ".");
        bar.getStyle().set("width", Math.round(100 * done.evidenceShare()) + "%");
        List<String> why = condition.ignored().stream().map(each -> each.why()).toList();
        ignoredFrame.setVisible(!why.isEmpty());
        ignored.removeAll();
        ignored.add(Plain.list(why));
    }

    private static String time(double minutes) {
        long whole = Math.round(minutes);
        return whole < MINUTES_PER_HOUR
                ? whole + " min"
                : whole / MINUTES_PER_HOUR + " h " + whole % MINUTES_PER_HOUR + " min";
    }
}
