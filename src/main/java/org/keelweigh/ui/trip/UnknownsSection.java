package org.keelweigh.ui.trip;

import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.progressbar.ProgressBar;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.keelweigh.appraisal.UnknownsThatMatter;
import org.keelweigh.appraisal.UnknownsThatMatter.Unknown;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.ui.chart.Figure;
import org.keelweigh.ui.chart.Tornado;
import org.keelweigh.ui.chart.TornadoData;
import org.keelweigh.ui.shell.Background;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Finds out on demand which of the things that were assumed are worth asking for. */
final class UnknownsSection extends Sheet {

    private static final Logger LOG = LoggerFactory.getLogger(UnknownsSection.class);
    private static final int MOST_SHOWN = 12;
    private static final int MOST_SENTENCES = 6;
    private static final int MOST_VALUES = 3;
    private static final double WORTH_ASKING = 0.5;
    private static final Comparator<Unknown> WIDEST =
            Comparator.comparingDouble(Unknown::swing).reversed();
    private static final Comparator<Unknown> FIRST_TO_FIND_OUT =
            Comparator.comparing(Unknown::changesLeader).reversed().thenComparing(WIDEST);

    private final transient Desk desk;
    private final transient Background background;
    private final Button ask = new Button("Which unknowns matter?", click -> start());
    private final ProgressBar progress = new ProgressBar();
    private final Div result = new Div();

    UnknownsSection(Desk desk, Background background) {
        super(
                "Which unknowns matter?",
                "Moves each assumed figure to its plausible low and high end, and each choice that nobody made (material, drive, "
                        + "water, kind of use and the like) to everything else it could be, one at a time, and measures the "
                        + "boats anew. It takes some seconds.");
        this.desk = desk;
        this.background = background;
        ask.setTestId("unknowns");
        progress.setVisible(false);
        progress.getElement().setAttribute("aria-label", "Measuring");
        result.setTestId("unknowns-result");
        result.getElement().setAttribute("aria-live", "polite");
        result.addClassName("kw-stack");
        add(new Div(ask), progress, result);
    }

    private void start() {
        UI ui = UI.getCurrent();
        Facts facts = desk.facts();
        ask.setEnabled(false);
        progress.setVisible(true);
        progress.setValue(0);
        result.removeAll();
        background.run(() -> find(ui, facts));
    }

    private void find(UI ui, Facts facts) {
        try {
            Optional<UnknownsThatMatter> found =
                    desk.appraisal().unknowns(facts, share -> ui.access(() -> progress.setValue(Math.min(1, share))));
            ui.access(() -> finish(() -> found.ifPresentOrElse(this::show, this::showNothing)));
        } catch (RuntimeException e) {
            LOG.error("Looking for the unknowns that matter failed", e);
            ui.access(() ->
                    finish(() -> result.add(new Paragraph("This could not be measured; the reason is in the log."))));
        }
    }

    private void finish(Runnable show) {
        progress.setVisible(false);
        ask.setEnabled(true);
        show.run();
    }

    private void showNothing() {
        result.add(
                new Paragraph(
                        "Nothing to find out here: either fewer than two boats are left to choose from, or every figure is known."));
    }

    private void show(UnknownsThatMatter found) {
        List<Unknown> shown = found.unknowns().stream()
                .filter(each -> each.swing() >= WORTH_ASKING || each.changesLeader())
                .sorted(FIRST_TO_FIND_OUT)
                .limit(MOST_SHOWN)
                .toList();
        if (shown.isEmpty()) {
            result.add(new Paragraph("None of them: whatever that which nobody said turns out to be, " + found.leader()
                    + " leads by about " + points(found.margin()) + "."));
            return;
        }
        Tornado chart = new Tornado("How far each unknown alone moves the lead of " + found.leader());
        chart.setData(data(found, shown));
        UnorderedList sentences = new UnorderedList();
        shown.stream()
                .limit(MOST_SENTENCES)
                .map(each -> sentence(found, each))
                .forEach(each -> sentences.add(new ListItem(each)));
        result.add(new Div(new Text(summary(found, shown))), sentences, chart);
    }

    private static String summary(UnknownsThatMatter found, List<Unknown> shown) {
        long flips = shown.stream().filter(Unknown::changesLeader).count();
        return found.leader() + " leads " + found.runnerUp() + " by " + points(found.margin()) + ". "
                + (flips == 0
                        ? "No single unknown would change that."
                        : flips + (flips == 1 ? " unknown" : " unknowns")
                                + " could, each alone: find these out first.");
    }

    private static String sentence(UnknownsThatMatter found, Unknown unknown) {
        String lead = unknown.name() + " (assumed " + unknown.assumed() + "): ";
        if (unknown.changesLeader()) {
            return lead + "would change the leader if it were " + changers(unknown) + ".";
        }
        String range = unknown.sort() == UnknownsThatMatter.Sort.CHOICE
                ? "whatever it is, "
                : "between " + unknown.tried().getFirst().value() + " and "
                        + unknown.tried().getLast().value() + " ";
        return lead + range + found.leader() + " leads by "
                + points(unknown.worse().margin()) + " to "
                + points(unknown.better().margin()) + ".";
    }

    private static String changers(Unknown unknown) {
        return unknown.changers().stream()
                .limit(unknown.sort() == UnknownsThatMatter.Sort.CHOICE ? MOST_VALUES : 1)
                .map(each -> words(unknown, each.value()))
                .collect(Collectors.joining(" or "));
    }

    private static String words(Unknown unknown, String value) {
        return unknown.sort() == UnknownsThatMatter.Sort.CHOICE ? "“" + value + "”" : value;
    }

    private static TornadoData data(UnknownsThatMatter found, List<Unknown> shown) {
        return new TornadoData(
                summary(found, shown),
                "lead of " + found.leader() + ", points of 100",
                new Figure(found.margin(), points(found.margin())),
                shown.stream().sorted(WIDEST).map(UnknownsSection::bar).toList());
    }

    private static TornadoData.Bar bar(Unknown unknown) {
        return new TornadoData.Bar(
                unknown.name(),
                new Figure(unknown.worse().margin(), points(unknown.worse().margin())),
                unknown.worse().value(),
                new Figure(unknown.better().margin(), points(unknown.better().margin())),
                unknown.better().value(),
                unknown.changesLeader() ? flip(unknown) : null);
    }

    private static String flip(Unknown unknown) {
        return (unknown.sort() == UnknownsThatMatter.Sort.CHOICE ? "at " : "before ") + changers(unknown);
    }

    private static String points(double value) {
        String digits = Display.number(value, 1).replace('-', '−');
        return digits + ("1.0".equals(digits) ? " point" : " points");
    }
}
