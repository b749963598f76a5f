package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.ConditionAssessment;
import org.keelweigh.condition.NextCheck;
import org.keelweigh.shortlist.VisitOrder;

/**
 * The checks of a visit in the order to make them; the one place that decides it. What a check is worth comes from {@link
 * ConditionAssessment#nextChecks()}, what it could do to the choice from {@link NextChecks}.
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
     * Plans a route: takes checks as long as they fit, then puts those in the order asked for. What is taken first is what is
     * worth most per minute or, if asked for, what could change the choice.
     *
     * @param minutes minutes of somebody's time that are left
     * @param outlooks what each check on this boat could do to the choice, the first to make first; while they are not known
     *     the worth per minute stands in for them
     */
    public static VisitRoute of(
            ConditionAssessment condition, double minutes, VisitOrder order, List<CheckOutlook> outlooks) {
        List<Check> wanted = order == VisitOrder.CHOICE ? choiceFirst(condition, outlooks) : byWorth(condition);
        Set<String> fitting = new HashSet<>();
        double left = minutes;
        for (Check check : wanted) {
            if (check.minutes() <= left) {
                left -= check.minutes();
                fitting.add(check.id());
            }
        }
        List<Check> planned = new ArrayList<>(
                wanted.stream().filter(each -> fitting.contains(each.id())).toList());
        List<Check> later =
                wanted.stream().filter(each -> !fitting.contains(each.id())).toList();
        if (order == VisitOrder.WALK) {
            planned.sort(Comparator.comparing(Check::zone));
        }
        return new VisitRoute(planned, later);
    }

    /** Tells the route without checks that were made since it was planned. */
    public VisitRoute without(Predicate<Check> made) {
        return new VisitRoute(
                planned.stream().filter(made.negate()).toList(),
                later.stream().filter(made.negate()).toList());
    }

    private static List<Check> byWorth(ConditionAssessment condition) {
        return condition.nextChecks().stream().map(NextCheck::check).toList();
    }

    private static List<Check> choiceFirst(ConditionAssessment condition, List<CheckOutlook> outlooks) {
        List<String> first = outlooks.stream().map(each -> each.check().id()).toList();
        return byWorth(condition).stream()
                .sorted(Comparator.comparingInt(
                        each -> first.contains(each.id()) ? first.indexOf(each.id()) : first.size()))
                .toList();
    }

    /** Tells all checks not made yet in the order to make them. */
    public List<Check> all() {
        List<Check> all = new ArrayList<>(planned);
        all.addAll(later);
        return List.copyOf(all);
    }

    /** Tells every check that applies: those to make in their order, then those made already. */
    public List<Check> all(List<Check> applicable) {
        List<Check> all = new ArrayList<>(all());
        applicable.stream()
                .filter(check -> all.stream().noneMatch(each -> each.id().equals(check.id())))
                .forEach(all::add);
        return List.copyOf(all);
    }
}
