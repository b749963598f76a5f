package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.keelweigh.decision.robust.WeightStability;
import org.keelweigh.shortlist.Display;

/** Says which weights would have to change, and to what, for another boat to lead. */
final class Borders {

    private static final int MOST_NAMED = 2;
    private static final double LEVEL = 1e-9;
    /** Weights are told in whole percent: half of one is no step. */
    private static final double LEAST_STEP = 0.005;

    private static final double NO_BORDER = 2;

    private final Measured measured;
    private final Perspective perspective;

    Borders(Measured measured, Perspective perspective) {
        this.measured = measured;
        this.perspective = perspective;
    }

    /** The criteria whose weight has the least room before another boat leads. */
    List<String> sentences(int leader) {
        List<String> changes = new ArrayList<>(perspective.stability().stream()
                .filter(each -> below(each) < NO_BORDER || above(each) < NO_BORDER)
                .sorted(Comparator.comparingDouble(each -> Math.min(below(each), above(each))))
                .limit(MOST_NAMED)
                .map(each -> change(leader, each))
                .toList());
        double best = perspective.ranking().total(leader);
        String never = perspective.neverBest().stream()
                .filter(boat -> perspective.ranking().total(boat) < best - LEVEL)
                .map(this::name)
                .collect(Collectors.joining(" or "));
        if (!never.isEmpty()) {
            changes.add("No weights at all would put " + never + " first alone.");
        }
        return changes;
    }

    /** How far the weight has to fall for another boat to lead. A border that rounds to where it is, or to nought, is none. */
    private static double below(WeightStability each) {
        boolean border = each.winnerBelow().isPresent()
                && each.from() >= LEAST_STEP
                && each.weight() - each.from() >= LEAST_STEP;
        return border ? each.weight() - each.from() : NO_BORDER;
    }

    private static double above(WeightStability each) {
        boolean border = each.winnerAbove().isPresent()
                && each.to() <= 1 - LEAST_STEP
                && each.to() - each.weight() >= LEAST_STEP;
        return border ? each.to() - each.weight() : NO_BORDER;
    }

    private String change(int leader, WeightStability stability) {
        Yardstick yardstick = measured.yardsticks().all().get(stability.criterion());
        boolean below = below(stability) < above(stability);
        int winner = (below ? stability.winnerBelow() : stability.winnerAbove()).orElse(leader);
        return name(winner) + " would lead if " + Reasons.lower(yardstick.name()) + " counted for "
                + (below ? "less than " : "more than ")
                + Display.number(100 * (below ? stability.from() : stability.to()), 0) + " % (it is "
                + Display.number(100 * stability.weight(), 0) + " % now).";
    }

    private String name(int boat) {
        return measured.boats().get(boat).name();
    }
}
