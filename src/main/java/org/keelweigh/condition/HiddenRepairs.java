package org.keelweigh.condition;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * What faults nobody has found yet will probably cost, group by group.
 *
 * <p>Within a group one repair cures all, so the spend is the largest of what each hidden fault would take and of what the
 * known faults of the group take already; only what exceeds the known spend counts as hidden. With the checks of a group
 * taken as independent given their chances, the distribution of that largest spend is exact: its distribution function is
 * the product of those of the single checks. Faults with a common cause make the largest of several smaller on average than
 * independent ones of the same chances, so the mean is then an upper bound.
 *
 * <p>A hidden fault that would stop the purchase outright costs nothing here: it is its own number,
 * {@link #stopChance()}. Groups weighed elsewhere (papers, seller, gear, trailer) do not count either.
 *
 * @param groups what each group may cost beyond the known, in group order
 * @param stopChance chance of at least one hidden fault of the boat itself that would stop the purchase, 0 to 1
 */
public record HiddenRepairs(List<Spread> groups, double stopChance) {

    public HiddenRepairs {
        groups = List.copyOf(groups);
    }

    /**
     * One possible spend.
     *
     * @param spend money beyond what the known faults of the group take
     * @param chance how likely, 0 to 1
     */
    public record Step(double spend, double chance) {}

    /**
     * The possible spends of one group, rising; their chances sum to 1.
     *
     * @param group the group
     * @param steps the spends
     */
    public record Spread(RepairGroup group, List<Step> steps) {

        public Spread {
            steps = List.copyOf(steps);
        }

        /** Tells the mean. */
        public double mean() {
            return steps.stream()
                    .mapToDouble(step -> step.spend() * step.chance())
                    .sum();
        }

        /**
         * Tells the least spend that is not exceeded with chance {@code share}: with a uniform random {@code share} this
         * draws one future.
         *
         * @param share 0 to 1
         */
        public double quantile(double share) {
            if (!(share >= 0 && share <= 1)) {
                throw new IllegalArgumentException("A quantile lies between 0 and 1, but is " + share);
            }
            double reached = 0;
            for (Step step : steps) {
                reached += step.chance();
                if (reached >= share) {
                    return step.spend();
                }
            }
            return steps.getLast().spend();
        }
    }

    /**
     * Computes the spreads.
     *
     * @param checks the checks whose true outcome is not settled
     * @param chances how likely each of their outcomes is
     * @param known the expected spend on known faults, by group
     */
    static HiddenRepairs of(
            List<Check> checks, Function<Check, OutcomeChances> chances, Map<RepairGroup, Double> known) {
        Map<RepairGroup, List<List<Step>>> byGroup = new EnumMap<>(RepairGroup.class);
        double standing = 1;
        for (Check check : checks) {
            if (check.group().hiddenInBoat()) {
                OutcomeChances likely = chances.apply(check);
                byGroup.computeIfAbsent(check.group(), group -> new ArrayList<>())
                        .add(spends(check, likely));
                standing *= stops(check) ? 1 - likely.stop() : 1;
            }
        }
        List<Spread> groups = new ArrayList<>();
        byGroup.forEach(
                (group, spends) -> groups.add(new Spread(group, largest(spends, known.getOrDefault(group, 0.0)))));
        return new HiddenRepairs(groups, 1 - standing);
    }

    private static boolean stops(Check check) {
        return check.grade(Outcome.STOP)
                .map(grade -> grade.stop() == StopRule.YES)
                .orElse(false);
    }

    private static List<Step> spends(Check check, OutcomeChances likely) {
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(0, likely.fine()));
        for (Outcome outcome : List.of(Outcome.MINOR, Outcome.MAJOR, Outcome.STOP)) {
            double spend = check.grade(outcome)
                    .filter(grade -> grade.stop() != StopRule.YES)
                    .map(Grade::expectedSpend)
                    .orElse(0.0);
            steps.add(new Step(spend, likely.of(outcome)));
        }
        return steps;
    }

    private static List<Step> largest(List<List<Step>> spends, double known) {
        double[] values = spends.stream()
                .flatMap(List::stream)
                .mapToDouble(step -> Math.max(step.spend(), known))
                .distinct()
                .sorted()
                .toArray();
        List<Step> steps = new ArrayList<>();
        double below = 0;
        for (double value : values) {
            double upTo = 1;
            for (List<Step> check : spends) {
                upTo *= chanceUpTo(check, value);
            }
            steps.add(new Step(value - known, upTo - below));
            below = upTo;
        }
        return steps;
    }

    private static double chanceUpTo(List<Step> check, double value) {
        double above = 0;
        for (Step step : check) {
            above += step.spend() > value ? step.chance() : 0;
        }
        return 1 - above;
    }

    /** Tells the mean over all groups. */
    public double mean() {
        return groups.stream().mapToDouble(Spread::mean).sum();
    }
}
