package org.keelweigh.ui.compare;

import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.keelweigh.appraisal.Disagreement;
import org.keelweigh.appraisal.TogetherReport;
import org.keelweigh.shortlist.Display;

/** Several deciders: whom each would choose, where they differ, and which boats all can live with. */
class TogetherSection extends Fold implements Part {

    private static final int MOST_CONTRASTS = 5;
    private static final double WORTH_TALKING = 0.5;

    private final UnorderedList voices = new UnorderedList();
    private final UnorderedList contrasts = new UnorderedList();
    private final UnorderedList choices = new UnorderedList();

    TogetherSection() {
        super("The two of you, or all of you");
        setId("together");
        put(new H3("What each would choose"), voices);
        put(new H3("Where you differ, and how much it matters"), contrasts);
        put(new H3("What all could live with"), choices);
        Paragraph note = new Paragraph(
                "Comparing one person's points with another's assumes that a full step means as much to both; only you can tell.");
        note.addClassName("kw-soft");
        put(note);
    }

    @Override
    public void show(Glance glance) {
        Optional<TogetherReport> report = TogetherReport.of(glance.measured());
        setVisible(report.isPresent());
        report.ifPresent(each -> show(glance, each));
    }

    private void show(Glance glance, TogetherReport report) {
        rename(report.voices().stream().map(TogetherReport.Voice::name).collect(Collectors.joining(" and "))
                + " together");
        voices.removeAll();
        report.voices().forEach(each -> voices.add(new ListItem(voice(glance, each))));
        contrasts.removeAll();
        List<Disagreement> worth = report.contrasts().stream()
                .filter(each -> each.points() >= WORTH_TALKING)
                .limit(MOST_CONTRASTS)
                .toList();
        worth.forEach(each -> contrasts.add(new ListItem(contrast(glance, report, each))));
        if (worth.isEmpty()) {
            contrasts.add(new ListItem("Nothing that you weigh differently moves these boats by half a point."));
        }
        choices.removeAll();
        choice(glance, report, "Middle way (the mean of everybody's totals)", report.compromise(), this::totals);
        choice(glance, report, "Least regret", report.leastRegret(), this::regret);
        choice(glance, report, "Most places won (Borda's count)", report.borda(), this::places);
    }

    private static String voice(Glance glance, TogetherReport.Voice voice) {
        if (voice.leader().isEmpty()) {
            return voice.name() + ": every boat is ruled out.";
        }
        String ahead = voice.margin().isPresent()
                ? ", " + Glance.points(voice.margin().getAsDouble()) + " ahead of the next"
                : "";
        return voice.name() + " would choose " + glance.name(voice.leader().getAsInt()) + ahead + ".";
    }

    private static String contrast(Glance glance, TogetherReport report, Disagreement contrast) {
        String weights = IntStream.range(0, contrast.shares().size())
                .mapToObj(p -> report.voices().get(p).name() + " gives it "
                        + Display.number(100 * contrast.shares().get(p), 0) + " %")
                .collect(Collectors.joining(", "));
        return glance.yardsticks().get(contrast.criterion()).name() + ": " + weights
                + "; it moves two boats apart by up to " + Glance.points(contrast.points()) + ".";
    }

    private interface Reason {
        String of(TogetherReport report, int boat);
    }

    private void choice(Glance glance, TogetherReport report, String rule, OptionalInt boat, Reason reason) {
        String text = boat.isEmpty()
                ? rule + ": no boat is left."
                : rule + ": " + glance.name(boat.getAsInt()) + ", " + reason.of(report, boat.getAsInt()) + ".";
        choices.add(new ListItem(text));
    }

    private String totals(TogetherReport report, int boat) {
        return IntStream.range(0, report.voices().size())
                .mapToObj(p -> Display.number(report.shares().get(boat).totals().get(p), 0) + " points for "
                        + report.voices().get(p).name())
                .collect(Collectors.joining(" and "));
    }

    private String regret(TogetherReport report, int boat) {
        double regret = report.shares().get(boat).largestRegret();
        return regret < WORTH_TALKING / 10
                ? "which is everybody's own best choice"
                : "with which nobody gives up more than " + Glance.points(regret) + " against their own best choice";
    }

    private String places(TogetherReport report, int boat) {
        double places = report.shares().get(boat).bordaPoints();
        return "with " + Display.number(places, places == Math.rint(places) ? 0 : 1) + " places won";
    }
}
