package org.keelweigh.decision;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** The alternatives by total value, with what each criterion contributed. Ruled-out alternatives stand last. */
public final class Ranking {

    private final double[] totals;
    private final double[][] contributions;
    private final boolean[] ruledOut;
    private final int[] ranks;

    /** Takes the arrays over without copying: only {@link AdditiveModel} builds rankings, from fresh arrays. */
    Ranking(double[] totals, double[][] contributions, boolean[] ruledOut, int[] ranks) {
        this.totals = totals;
        this.contributions = contributions;
        this.ruledOut = ruledOut;
        this.ranks = ranks;
    }

    /** Returns the ranking of no alternatives at all: it has no leader and no margin. */
    public static Ranking empty() {
        return new Ranking(new double[0], new double[0][], new boolean[0], new int[0]);
    }

    /** Returns the number of alternatives, ruled out or not. */
    public int size() {
        return totals.length;
    }

    /** Returns the total value of an alternative, 0 to 100. */
    public double total(int alternative) {
        return totals[alternative];
    }

    /** Returns {@code w_c v_ac}, the points that a criterion contributes to an alternative's total. */
    public double contribution(int alternative, int criterion) {
        return contributions[alternative][criterion];
    }

    /** Returns the competition rank, from 1; ties share a rank. */
    public int rank(int alternative) {
        return ranks[alternative];
    }

    /** Tells whether an alternative is ruled out. */
    public boolean ruledOut(int alternative) {
        return ruledOut[alternative];
    }

    /** Returns the alternatives from first to last; ties in the order of the table. */
    public List<Integer> order() {
        return IntStream.range(0, ranks.length)
                .boxed()
                .sorted(Comparator.comparing(a -> ranks[a]))
                .toList();
    }

    /** Returns the alternatives that share the first place; empty if all are ruled out. */
    public List<Integer> first() {
        return IntStream.range(0, ranks.length)
                .filter(a -> ranks[a] == 1 && !ruledOut[a])
                .boxed()
                .toList();
    }

    /** Returns the first alternative, of several tied ones the first in the table; empty if all are ruled out. */
    public OptionalInt leader() {
        return first().stream().mapToInt(Integer::intValue).findFirst();
    }

    /** Returns the best alternative after the leader that is not ruled out; it may be tied with the leader. */
    public OptionalInt runnerUp() {
        return order().stream()
                .mapToInt(Integer::intValue)
                .filter(a -> !ruledOut[a])
                .skip(1)
                .findFirst();
    }

    /** Returns the leader's total minus the runner-up's, in value points; empty with fewer than two to choose from. */
    public OptionalDouble margin() {
        OptionalInt second = runnerUp();
        return second.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(totals[leader().getAsInt()] - totals[second.getAsInt()]);
    }
}
