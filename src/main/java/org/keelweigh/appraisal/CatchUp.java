package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.keelweigh.decision.robust.SmallestChange;
import org.keelweigh.shortlist.Display;

/** Says for every rival how little the weights would have to change for it to catch up with the leader. */
public final class CatchUp {

    private static final int MOST_NAMED = 2;
    private static final double WORTH_NAMING = 0.005;
    private static final double NEARLY_ALL = 0.9;

    private final Measured measured;
    private final Perspective perspective;

    private CatchUp(Measured measured, Perspective perspective) {
        this.measured = measured;
        this.perspective = perspective;
    }

    /** Says it in a sentence for each rival, the best one first; none if there is no leader. */
    public static List<String> of(Measured measured, Perspective perspective) {
        OptionalInt leader = perspective.ranking().leader();
        return leader.isEmpty()
                ? List.of()
                : perspective.ranking().order().stream()
                        .filter(boat -> boat != leader.getAsInt() && !perspective.ruledOut(boat))
                        .map(boat -> new CatchUp(measured, perspective).sentence(leader.getAsInt(), boat))
                        .toList();
    }

    private String sentence(int leader, int rival) {
        return perspective
                .smallestChange(rival)
                .map(change -> sentence(leader, rival, change))
                .orElseGet(
                        () -> "No weights at all would let " + name(rival) + " draw level with " + name(leader) + ".");
    }

    private String sentence(int leader, int rival, SmallestChange change) {
        if (change.moved() < WORTH_NAMING) {
            return name(rival) + " is as good as level with " + name(leader) + " already.";
        }
        if (change.moved() > NEARLY_ALL) {
            return name(rival) + " would draw level with " + name(leader)
                    + " only if nearly all the weight lay where it does not lie now.";
        }
        return name(rival) + " would draw level with " + name(leader) + " if " + Display.number(100 * change.moved(), 0)
                + " % of the weight moved: " + moves(change) + ".";
    }

    private String moves(SmallestChange change) {
        List<String> parts = new ArrayList<>();
        String more = named(change, 1);
        String less = named(change, -1);
        if (!more.isEmpty()) {
            parts.add("more on " + more);
        }
        if (!less.isEmpty()) {
            parts.add("less on " + less);
        }
        return String.join(", ", parts);
    }

    private String named(SmallestChange change, int sign) {
        return IntStream.range(0, change.changes().size())
                .boxed()
                .filter(c -> sign * change.changes().get(c) > WORTH_NAMING)
                .sorted(Comparator.comparingDouble(c -> -sign * change.changes().get(c)))
                .limit(MOST_NAMED)
                .map(c -> lower(measured.yardsticks().all().get(c).name()))
                .collect(Collectors.joining(" and "));
    }

    private String name(int boat) {
        return measured.boats().get(boat).name();
    }

    private static String lower(String name) {
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }
}
