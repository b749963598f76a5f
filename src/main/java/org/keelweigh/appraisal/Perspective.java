package org.keelweigh.appraisal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.keelweigh.decision.AdditiveModel;
import org.keelweigh.decision.Difference;
import org.keelweigh.decision.Dominance;
import org.keelweigh.decision.Frontier;
import org.keelweigh.decision.Ranking;
import org.keelweigh.decision.Weights;
import org.keelweigh.decision.robust.EverBest;
import org.keelweigh.decision.robust.SmallestChange;
import org.keelweigh.decision.robust.WeightStability;
import org.keelweigh.shortlist.PersonId;

/**
 * The boats as one person weighs them, or as all deciders do together.
 *
 * <p>Boats are counted in the order of the appraisal, criteria in theirs. Computing one takes microseconds, so that it can
 * follow a slider.
 */
public final class Perspective {

    private final Optional<PersonId> person;
    private final String name;
    private final Weights weights;
    private final double[][] values;
    private final boolean[] ruledOut;
    private final double[] shares;
    private final Ranking ranking;

    /**
     * Values and ranks the boats.
     *
     * @param person whose view it is; empty for all deciders together
     * @param name their name
     * @param weights their weights, by criterion
     * @param values {@code [boat][criterion]}, 0 to 100; taken over
     * @param ruledOut the boats that come last whatever their value; taken over
     */
    Perspective(Optional<PersonId> person, String name, Weights weights, double[][] values, boolean[] ruledOut) {
        this.person = person;
        this.name = name;
        this.weights = weights;
        this.values = values;
        this.ruledOut = ruledOut;
        this.shares = weights.toArray();
        this.ranking = values.length == 0 ? Ranking.empty() : AdditiveModel.rank(values, shares, ruledOut);
    }

    /** Tells whose view it is; empty for all deciders together. */
    public Optional<PersonId> person() {
        return person;
    }

    /** Tells their name. */
    public String name() {
        return name;
    }

    /** Tells the weights. */
    public Weights weights() {
        return weights;
    }

    /** Tells the ranking with totals and contributions. */
    public Ranking ranking() {
        return ranking;
    }

    /** Tells the value of a boat on a criterion, 0 to 100. */
    public double value(int boat, int criterion) {
        return values[boat][criterion];
    }

    /** Tells the share of a criterion. */
    public double share(int criterion) {
        return shares[criterion];
    }

    /** Tells how far the boats that are not ruled out lie apart on a criterion, in points of its scale of 100. */
    public double spread(int criterion) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int boat = 0; boat < values.length; boat++) {
            if (!ruledOut[boat]) {
                least = Math.min(least, values[boat][criterion]);
                most = Math.max(most, values[boat][criterion]);
            }
        }
        return Math.max(0, most - least);
    }

    /** Tells the same boats under other weights. */
    public Perspective with(Weights others) {
        return new Perspective(person, name, others, values, ruledOut);
    }

    /**
     * Tells, for each criterion, how much of the difference between the boats left to choose from it makes; the shares sum to
     * one, or are all zero where nothing differs.
     */
    public double[] effectiveShares() {
        double[][] left = IntStream.range(0, values.length)
                .filter(boat -> !ruledOut[boat])
                .mapToObj(boat -> values[boat])
                .toArray(double[][]::new);
        return left.length == 0 ? new double[shares.length] : weights.effectiveShares(left);
    }

    /** Tells, for each criterion, how far its weight can move before another boat leads; empty without two to choose from. */
    public List<WeightStability> stability() {
        return ranking.runnerUp().isEmpty() ? List.of() : WeightStability.all(values, shares, ruledOut);
    }

    /** Lists the boats that no weights at all put first alone, though nothing rules them out: proved, not sampled. */
    public List<Integer> neverBest() {
        return IntStream.range(0, values.length)
                .filter(boat -> !ruledOut[boat] && ranking.leader().orElse(boat) != boat)
                .filter(boat -> EverBest.of(values, ruledOut, boat).lead() <= 0)
                .boxed()
                .toList();
    }

    /** Tells why one boat beats another, criterion by criterion. */
    public Difference difference(int boat, int other) {
        return Difference.between(values, shares, boat, other);
    }

    /** Tells which boats are beaten on every criterion. */
    public Dominance dominance() {
        return Dominance.of(values, ruledOut);
    }

    /** Tells the smallest change of weights that puts a rival first, alone or tied; empty when none does or it leads. */
    public Optional<SmallestChange> smallestChange(int rival) {
        OptionalInt leader = ranking.leader();
        return leader.isEmpty() || leader.getAsInt() == rival
                ? Optional.empty()
                : SmallestChange.toWin(values, shares, ruledOut, rival);
    }

    /** Tells what each boat is worth apart from one criterion, 0 to 100: its value with the other weights alone. */
    public double[] worthBeside(int criterion) {
        double[] rest = Weights.shareOfRest(shares, criterion);
        double[] worth = new double[values.length];
        for (int boat = 0; boat < values.length; boat++) {
            worth[boat] = AdditiveModel.total(values[boat], rest);
        }
        return worth;
    }

    /** Tells the boats no other is both cheaper and worth more than. */
    public Frontier frontier(int costCriterion, double[] costs) {
        return Frontier.of(costs, worthBeside(costCriterion), ruledOut);
    }

    /** Tells whether a boat is ruled out. */
    public boolean ruledOut(int boat) {
        return ruledOut[boat];
    }

    /** Tells how many boats there are. */
    public int size() {
        return values.length;
    }

    /** Copies the value table, {@code [boat][criterion]}. */
    public double[][] valueTable() {
        double[][] copy = new double[values.length][];
        for (int boat = 0; boat < values.length; boat++) {
            copy[boat] = values[boat].clone();
        }
        return copy;
    }

    /** Copies the flags of the boats that are ruled out. */
    public boolean[] ruledOutFlags() {
        return ruledOut.clone();
    }
}
