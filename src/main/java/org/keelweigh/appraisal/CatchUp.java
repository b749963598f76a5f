package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.keelweigh.decision.robust.SmallestChange;
import org.keelweigh.shortlist.Display;

/**
 * How little the weights would have to change for a rival to come first.
 *
 * @param rival the place of the boat
 * @param change the smallest change that puts it first, alone or level with another; empty if no weights do
 * @param sentence the same in words
 */
public record CatchUp(int rival, Optional<SmallestChange> change, String sentence) {

    private static final int MOST_NAMED = 2;
    private static final double WORTH_NAMING = 0.005;
    private static final double NEARLY_ALL = 0.9;

    /** Finds it for each rival, the best one first; none if there is no leader. */
    public static List<CatchUp> of(Measured measured, Perspective perspective) {
        OptionalInt leader = perspective.ranking().leader();
        return leader.isEmpty()
                ? List.of()
                : perspective.ranking().order().stream()
                        .filter(boat -> boat != leader.getAsInt() && !perspective.ruledOut(boat))
                        .map(boat -> of(measured, perspective, leader.getAsInt(), boat))
                        .toList();
    }

    private static CatchUp of(Measured measured, Perspective perspective, int leader, int rival) {
        Optional<SmallestChange> change = perspective.smallestChange(rival);
        String name = measured.boats().get(rival).name();
        String first = measured.boats().get(leader).name();
        return new CatchUp(
                rival,
                change,
                change.map(found -> sentence(measured, name, first, found))
                        .orElse("No weights at all would put " + name + " first."));
    }

    private static String sentence(Measured measured, String name, String leader, SmallestChange change) {
        if (change.moved() < WORTH_NAMING) {
            return name + " is as good as level with " + leader + " already.";
        }
        if (change.moved() > NEARLY_ALL) {
            return name + " would come first only if nearly all the weight lay where it does not lie now.";
        }
        return name + " would come first if " + Display.number(100 * change.moved(), 0) + " % of the weight moved: "
                + moves(measured, change) + ".";
    }

    private static String moves(Measured measured, SmallestChange change) {
        List<String> parts = new ArrayList<>();
        String more = named(measured, change, 1);
        String less = named(measured, change, -1);
        if (!more.isEmpty()) {
            parts.add("more on " + more);
        }
        if (!less.isEmpty()) {
            parts.add("less on " + less);
        }
        return String.join(", ", parts);
    }

    private static String named(Measured measured, SmallestChange change, int sign) {
        return IntStream.range(0, change.changes().size())
                .boxed()
                .filter(c -> sign * change.changes().get(c) > WORTH_NAMING)
                .sorted(Comparator.comparingDouble(c -> -sign * change.changes().get(c)))
                .limit(MOST_NAMED)
                .map(c -> lower(measured.yardsticks().all().get(c).name()))
                .collect(Collectors.joining(" and "));
    }

    private static String lower(String name) {
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }
}
