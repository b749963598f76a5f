package org.keelweigh.decision.robust;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.keelweigh.decision.AdditiveModel;
import org.keelweigh.decision.Tables;
import org.keelweigh.decision.Weights;

/**
 * How far one weight can move before another alternative is first, exactly, while the other weights keep their
 * proportions.
 *
 * <p>With {@code w_k = t} a total is the straight line {@code V_a(t) = t v_ak + (1 − t) R_a}, where {@code R_a} is the
 * total over the other criteria by their shares of the rest. The highest line over 0 to 1 tells who wins where
 * (Mareschal 1988 for the idea of weight stability intervals).
 *
 * @param criterion column k
 * @param weight the present weight of k
 * @param winner the present winner
 * @param from lowest weight at which the present winner is still first or tied
 * @param to highest such weight
 * @param segments who is first over the whole of 0 to 1, without gaps
 */
public record WeightStability(
        int criterion, double weight, int winner, double from, double to, List<Segment> segments) {

    /** Copies the segments. */
    public WeightStability {
        segments = List.copyOf(segments);
    }

    /**
     * Computes the stability of every weight; empty if all alternatives are ruled out.
     *
     * @param values {@code [alternative][criterion]}
     * @throws IllegalArgumentException if table, weights and flags do not fit together
     */
    public static List<WeightStability> all(double[][] values, double[] weights, boolean[] ruledOut) {
        OptionalInt leader = AdditiveModel.rank(values, weights, ruledOut).leader();
        return leader.isEmpty()
                ? List.of()
                : IntStream.range(0, weights.length)
                        .mapToObj(k -> of(values, weights, ruledOut, k, leader.getAsInt()))
                        .toList();
    }

    private static WeightStability of(double[][] values, double[] weights, boolean[] ruledOut, int k, int winner) {
        double[] starts = restTotals(values, weights, k);
        double[] ends = new double[values.length];
        double from = 0;
        double to = 1;
        for (int a = 0; a < values.length; a++) {
            ends[a] = weights.length > 1 ? values[a][k] : starts[a];
        }
        for (int a = 0; a < values.length; a++) {
            double leadAtStart = starts[winner] - starts[a];
            double gain = ends[winner] - ends[a] - leadAtStart;
            if (ruledOut[a] || Math.abs(gain) <= UpperEnvelope.SAME) {
                continue;
            }
            if (gain > 0) {
                from = Math.max(from, -leadAtStart / gain);
            } else {
                to = Math.min(to, -leadAtStart / gain);
            }
        }
        // a border that rounding alone keeps from the end is no border
        from = from <= UpperEnvelope.SAME ? 0 : from;
        to = to >= 1 - UpperEnvelope.SAME ? 1 : to;
        List<Segment> segments = UpperEnvelope.segments(starts, ends, ruledOut, winner);
        return new WeightStability(
                k, weights[k], winner, Math.min(from, weights[k]), Math.max(to, weights[k]), segments);
    }

    /** Returns the totals over all criteria but k; with an only criterion its values, since nothing can move. */
    private static double[] restTotals(double[][] values, double[] weights, int k) {
        return AdditiveModel.totals(values, weights.length > 1 ? Weights.shareOfRest(weights, k) : weights);
    }

    /**
     * Returns the weight of one criterion at which two alternatives tie: {@code t = R / (R − d_k)} with {@code d} the
     * difference of their values and {@code R} its mean over the other criteria. Empty if they never tie between 0 and 1
     * or tie everywhere.
     */
    public static OptionalDouble tieWeight(double[][] values, double[] weights, int criterion, int a, int b) {
        Tables.requireWeights(weights, Tables.requireTable(values));
        Tables.requireIndex(criterion, weights.length);
        Tables.requireIndex(a, values.length);
        Tables.requireIndex(b, values.length);
        double[] rest = restTotals(values, weights, criterion);
        double restDifference = rest[a] - rest[b];
        double bend = restDifference - (values[a][criterion] - values[b][criterion]);
        double tie = restDifference / bend;
        return Math.abs(bend) > UpperEnvelope.SAME && tie >= 0 && tie <= 1
                ? OptionalDouble.of(tie)
                : OptionalDouble.empty();
    }

    /** Tells whether the present winner stays first whatever this weight is. */
    public boolean holdsEverywhere() {
        return from <= 0 && to >= 1;
    }

    /** Returns who is first once the weight falls below {@link #from}; empty if the winner stays first down to 0. */
    public OptionalInt winnerBelow() {
        return from <= 0
                ? OptionalInt.empty()
                : segments.stream()
                        .filter(segment -> segment.winner() != winner && middle(segment) < weight)
                        .mapToInt(Segment::winner)
                        .reduce((first, last) -> last);
    }

    /** Returns who is first once the weight rises above {@link #to}; empty if the winner stays first up to 1. */
    public OptionalInt winnerAbove() {
        return to >= 1
                ? OptionalInt.empty()
                : segments.stream()
                        .filter(segment -> segment.winner() != winner && middle(segment) > weight)
                        .mapToInt(Segment::winner)
                        .findFirst();
    }

    private static double middle(Segment segment) {
        return (segment.from() + segment.to()) / 2;
    }

    /** Returns the distance from the present weight to the nearer border, 0 to 1; 1 if there is none. */
    public double room() {
        double below = from > 0 ? weight - from : 1;
        double above = to < 1 ? to - weight : 1;
        return Math.min(below, above);
    }
}
