package org.keelweigh.decision;

import java.util.Arrays;
import java.util.Comparator;

/** Turns scores into competition ranks: 1, 2, 2, 4. */
public final class Ranks {

    /** Scores closer than this are a tie: a billionth of a value point is rounding, never a reason to choose. */
    public static final double TIE = 1e-9;

    private Ranks() {}

    /** Ranks scores, highest first, with nothing ruled out; see {@link #competition(double[], boolean[])}. */
    public static int[] competition(double[] scores) {
        return competition(scores, new boolean[scores.length]);
    }

    /**
     * Ranks scores, highest first. Ties share the better rank and leave a gap behind them. Ruled-out alternatives come
     * after all others, ranked among themselves.
     *
     * @return rank by alternative, from 1
     * @throws IllegalArgumentException if a score is not a number or the lengths differ
     */
    public static int[] competition(double[] scores, boolean[] ruledOut) {
        Tables.requireFlags(ruledOut, scores.length);
        int[] order = sorted(scores, ruledOut);
        int[] ranks = new int[scores.length];
        int first = 0;
        for (int place = 0; place < order.length; place++) {
            int a = order[place];
            int head = order[first];
            boolean close = scores[a] == scores[head] || scores[head] - scores[a] <= TIE;
            if (!close || ruledOut[a] != ruledOut[head]) {
                first = place;
            }
            ranks[a] = first + 1;
        }
        return ranks;
    }

    private static int[] sorted(double[] scores, boolean[] ruledOut) {
        Integer[] order = new Integer[scores.length];
        for (int a = 0; a < order.length; a++) {
            if (Double.isNaN(scores[a])) {
                throw new IllegalArgumentException("Score " + a + " must be a number");
            }
            order[a] = a;
        }
        Arrays.sort(
                order,
                Comparator.<Integer, Boolean>comparing(a -> ruledOut[a])
                        .thenComparing(a -> scores[a], Comparator.reverseOrder()));
        return Arrays.stream(order).mapToInt(Integer::intValue).toArray();
    }
}
