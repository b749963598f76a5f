package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.ConditionAssessment;
import org.keelweigh.condition.NextCheck;

/**
 * The checks of a visit in the order to make them. What a check is worth comes from one place, {@link
 * ConditionAssessment#nextChecks()}.
 *
 * @param planned checks not made yet that fit into the time, in order
 * @param later checks not made yet that do not fit any more, the most worthwhile first
 */
public record VisitRoute(List<Check> planned, List<Check> later) {

    public VisitRoute {
        planned = List.copyOf(planned);
        later = List.copyOf(later);
    }

    /**
     * Plans a route: takes checks in the order of their worth per minute as long as they fit, then puts those in the order
     * asked for.
     *
     * @param minutes minutes of somebody's time that are left
     */
    public static VisitRoute of(ConditionAssessment condition, double minutes, VisitOrder order) {
        List<Check> byWorth =
                condition.nextChecks().stream().map(NextCheck::check).toList();
        Set<String> fitting = new HashSet<>();
        double left = minutes;
        for (Check check : byWorth) {
            if (check.minutes() <= left) {
                left -= check.minutes();
                fitting.add(check.id());
            }
        }
        List<Check> planned = new ArrayList<>(
                byWorth.stream().filter(each -> fitting.contains(each.id())).toList());
        List<Check> later =
                byWorth.stream().filter(each -> !fitting.contains(each.id())).toList();
        if (order == VisitOrder.WALK) {
            planned.sort(Comparator.comparing(Check::zone));
        }
        return new VisitRoute(planned, later);
    }

    /** Tells all checks not made yet in the order to make them. */
    public List<Check> all() {
        List<Check> all = new ArrayList<>(planned);
        all.addAll(later);
        return List.copyOf(all);
    }
}
