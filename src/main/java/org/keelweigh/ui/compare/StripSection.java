package org.keelweigh.ui.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.keelweigh.decision.robust.Segment;
import org.keelweigh.decision.robust.WeightStability;
import org.keelweigh.shortlist.Display;
import org.keelweigh.ui.chart.Figure;
import org.keelweigh.ui.chart.WeightStrips;
import org.keelweigh.ui.chart.WeightStripsData;

/** Which boat would lead at every weight of each criterion. */
class StripSection extends Fold implements Part {

    private final WeightStrips strips = new WeightStrips("Who would lead if one thing counted for more or for less");

    StripSection() {
        super("Where the leader would change");
        put(strips);
    }

    WeightStrips strips() {
        return strips;
    }

    @Override
    public void show(Glance glance) {
        List<WeightStability> stability = glance.perspective().stability();
        setVisible(!stability.isEmpty());
        if (!stability.isEmpty()) {
            strips.setData(data(glance, stability));
        }
    }

    static WeightStripsData data(Glance glance, List<WeightStability> stability) {
        List<WeightStability> moving =
                stability.stream().filter(each -> !each.holdsEverywhere()).toList();
        List<WeightStability> shown = moving.isEmpty() ? stability : moving;
        Set<Integer> winners = new LinkedHashSet<>(List.of(stability.getFirst().winner()));
        shown.forEach(each -> each.segments().forEach(segment -> winners.add(segment.winner())));
        String leader = glance.name(stability.getFirst().winner());
        int firm = stability.size() - moving.size();
        String summary = moving.isEmpty()
                ? leader + " leads whatever any single criterion counts for."
                : leader + " leads now; " + moving.size() + " of " + stability.size()
                        + " criteria could change that, and the other " + firm + " could not, whatever they count for.";
        return new WeightStripsData(
                summary,
                winners.stream()
                        .map(each -> new WeightStripsData.Winner(glance.id(each), glance.name(each)))
                        .toList(),
                shown.stream().map(each -> strip(glance, each)).toList());
    }

    private static WeightStripsData.Strip strip(Glance glance, WeightStability stability) {
        List<WeightStripsData.Segment> segments = new ArrayList<>();
        for (Segment each : stability.segments()) {
            segments.add(new WeightStripsData.Segment(100 * each.from(), 100 * each.to(), glance.id(each.winner())));
        }
        double now = 100 * stability.weight();
        return new WeightStripsData.Strip(
                glance.yardsticks().get(stability.criterion()).name(),
                new Figure(Math.clamp(now, 0, 100), Display.number(now, 0) + " %"),
                segments,
                border(glance, stability));
    }

    private static String border(Glance glance, WeightStability stability) {
        List<String> words = new ArrayList<>();
        stability
                .winnerBelow()
                .ifPresent(boat ->
                        words.add(glance.name(boat) + " below " + Display.number(100 * stability.from(), 0) + " %"));
        stability
                .winnerAbove()
                .ifPresent(boat ->
                        words.add(glance.name(boat) + " above " + Display.number(100 * stability.to(), 0) + " %"));
        return words.isEmpty() ? "no change at any weight" : String.join(", ", words);
    }
}
