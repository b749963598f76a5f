package org.keelweigh.decision.group;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.keelweigh.decision.AdditiveModel;
import org.keelweigh.decision.Dominance;
import org.keelweigh.decision.Ranking;
import org.keelweigh.decision.Ranks;
import org.keelweigh.decision.Tables;
import org.keelweigh.decision.robust.Segment;
import org.keelweigh.decision.robust.UpperEnvelope;

/**
 * Several people who weigh the same values differently and have to choose one alternative together.
 *
 * <p>An alternative that is ruled out for one person is no common choice: every compromise here is taken among the
 * alternatives that are left for all. Comparing one person's points with another's assumes that the full step of every
 * scale means the same to both; nothing in the numbers can prove that.
 */
public final class Group {

    private final double[][] values;
    private final double[][] weights;
    private final double[][] totals;
    private final boolean[] vetoed;
    private final List<Ranking> rankings;

    private Group(double[][] values, double[][] weights, boolean[][] ruledOut) {
        this.values = values;
        this.weights = weights;
        this.vetoed = new boolean[values.length];
        this.totals = new double[weights.length][];
        List<Ranking> ranked = new ArrayList<>();
        for (int p = 0; p < weights.length; p++) {
            ranked.add(AdditiveModel.rank(values, weights[p], ruledOut[p]));
            totals[p] = AdditiveModel.totals(values, weights[p]);
            for (int a = 0; a < vetoed.length; a++) {
                vetoed[a] |= ruledOut[p][a];
            }
        }
        this.rankings = List.copyOf(ranked);
    }

    /**
     * Puts people together.
     *
     * @param values {@code [alternative][criterion]}
     * @param weights {@code [person][criterion]}, each row summing to one
     * @param ruledOut {@code [person][alternative]}
     * @throws IllegalArgumentException if there is nobody or the tables do not fit together
     */
    public static Group of(double[][] values, double[][] weights, boolean[][] ruledOut) {
        int columns = Tables.requireTable(values);
        if (weights.length == 0 || weights.length != ruledOut.length) {
            throw new IllegalArgumentException("There must be 1 or more people with weights and flags, but there are "
                    + weights.length + " and " + ruledOut.length);
        }
        for (int p = 0; p < weights.length; p++) {
            Tables.requireWeights(weights[p], columns);
            Tables.requireFlags(ruledOut[p], values.length);
        }
        return new Group(copy(values), copy(weights), ruledOut);
    }

    private static double[][] copy(double[][] table) {
        double[][] copy = new double[table.length][];
        for (int row = 0; row < table.length; row++) {
            copy[row] = table[row].clone();
        }
        return copy;
    }

    /** Returns each person's own ranking, with what is ruled out for that person last. */
    public List<Ranking> rankings() {
        return rankings;
    }

    /** Tells whether an alternative is ruled out for at least one person. */
    public boolean vetoed(int alternative) {
        return vetoed[alternative];
    }

    /** Returns the ranking by everyone's mean weights, with everything that anyone rules out last. */
    public Ranking meanWeights() {
        double[] mean = new double[values[0].length];
        for (double[] person : weights) {
            for (int c = 0; c < mean.length; c++) {
                mean[c] += person[c] / weights.length;
            }
        }
        return AdditiveModel.rank(values, mean, vetoed);
    }

    /**
     * Returns what a person gives up, in that person's value points, if this alternative is chosen instead of the person's
     * best common choice. Negative for a vetoed alternative that the person likes better than any common choice; against
     * the best of all if there is no common choice.
     */
    public double regret(int person, int alternative) {
        double best = Double.NEGATIVE_INFINITY;
        boolean none = commonChoices().isEmpty();
        for (int a = 0; a < values.length; a++) {
            best = none || !vetoed[a] ? Math.max(best, totals[person][a]) : best;
        }
        return best - totals[person][alternative];
    }

    /** Returns the largest regret that anyone has about an alternative. */
    public double largestRegret(int alternative) {
        return regrets(alternative).max();
    }

    private Regrets regrets(int alternative) {
        double max = Double.NEGATIVE_INFINITY;
        double sum = 0;
        for (int p = 0; p < weights.length; p++) {
            double regret = regret(p, alternative);
            max = Math.max(max, regret);
            sum += regret;
        }
        return new Regrets(max, sum);
    }

    private record Regrets(double max, double sum) {}

    /**
     * Returns the common choice whose largest regret is smallest (Savage 1951), among equals the one with the smallest
     * sum of regrets; empty if there is no common choice.
     */
    public OptionalInt leastRegret() {
        OptionalInt best = OptionalInt.empty();
        Regrets least = new Regrets(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        for (int a : commonChoices()) {
            Regrets regrets = regrets(a);
            boolean smaller = regrets.max() < least.max() - Ranks.TIE;
            boolean tied = Math.abs(regrets.max() - least.max()) <= Ranks.TIE;
            if (smaller || tied && regrets.sum() < least.sum() - Ranks.TIE) {
                best = OptionalInt.of(a);
                least = regrets;
            }
        }
        return best;
    }

    /** Returns the value of an alternative to the person to whom it is worth least. */
    public double smallestTotal(int alternative) {
        double smallest = Double.POSITIVE_INFINITY;
        for (double[] person : totals) {
            smallest = Math.min(smallest, person[alternative]);
        }
        return smallest;
    }

    /** Returns the common choice whose {@link #smallestTotal} is largest; empty if there is no common choice. */
    public OptionalInt maxMin() {
        double[] smallest = new double[values.length];
        for (int a = 0; a < smallest.length; a++) {
            smallest[a] = smallestTotal(a);
        }
        return first(smallest);
    }

    /** Returns the sum of everyone's Borda points for an alternative among the common choices; 0 for a vetoed one. */
    public double bordaPoints(int alternative) {
        double sum = 0;
        for (double[] person : totals) {
            sum += Borda.points(person, vetoed)[alternative];
        }
        return sum;
    }

    /** Returns the common choice with most Borda points; empty if there is no common choice. */
    public OptionalInt borda() {
        double[] points = new double[values.length];
        for (int a = 0; a < points.length; a++) {
            points[a] = bordaPoints(a);
        }
        return first(points);
    }

    private OptionalInt first(double[] scores) {
        int[] ranks = Ranks.competition(scores, vetoed);
        return IntStream.range(0, scores.length)
                .filter(a -> ranks[a] == 1 && !vetoed[a])
                .findFirst();
    }

    /** Returns the alternatives that nobody rules out. */
    public List<Integer> commonChoices() {
        return IntStream.range(0, vetoed.length).filter(a -> !vetoed[a]).boxed().toList();
    }

    /** Returns the common choices that no other one beats for someone without losing for anyone. */
    public List<Integer> pareto() {
        double[][] byAlternative = new double[values.length][weights.length];
        for (int a = 0; a < values.length; a++) {
            for (int p = 0; p < weights.length; p++) {
                byAlternative[a][p] = totals[p][a];
            }
        }
        return Dominance.of(byAlternative, vetoed).undominated();
    }

    /** Returns all criteria by how much people's different weights can move the choice, most first. */
    public List<Contention> contentions() {
        double[] spreads = Tables.spreads(values, vetoed);
        List<Contention> contentions = new ArrayList<>();
        for (int c = 0; c < spreads.length; c++) {
            double low = 1;
            double high = 0;
            for (double[] person : weights) {
                low = Math.min(low, person[c]);
                high = Math.max(high, person[c]);
            }
            contentions.add(new Contention(c, low, high, spreads[c]));
        }
        contentions.sort(Comparator.comparingDouble(Contention::points).reversed());
        return List.copyOf(contentions);
    }

    /**
     * Returns who would be first, from all say with one person (0) to all say with another (1), weights mixed in
     * proportion; empty if there is no common choice.
     */
    public List<Segment> betweenTwo(int fromPerson, int toPerson) {
        Tables.requireIndex(fromPerson, weights.length);
        Tables.requireIndex(toPerson, weights.length);
        return UpperEnvelope.segments(totals[fromPerson], totals[toPerson], vetoed, UpperEnvelope.NONE_PREFERRED);
    }
}
