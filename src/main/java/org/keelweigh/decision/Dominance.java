package org.keelweigh.decision;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Pareto dominance: a dominates b if it is at least as good in every column and better in one. Whatever the (positive)
 * weights, a dominated alternative cannot be first.
 */
public final class Dominance {

    private final boolean[][] dominates;
    private final boolean[] ruledOut;

    private Dominance(boolean[][] dominates, boolean[] ruledOut) {
        this.dominates = dominates;
        this.ruledOut = ruledOut;
    }

    /**
     * Compares all pairs. A ruled-out alternative dominates nothing, because it cannot be chosen instead.
     *
     * @param values {@code [alternative][criterion]}, more is better
     */
    public static Dominance of(double[][] values, boolean[] ruledOut) {
        Tables.requireTable(values);
        Tables.requireFlags(ruledOut, values.length);
        boolean[][] dominates = new boolean[values.length][values.length];
        for (int a = 0; a < values.length; a++) {
            for (int b = 0; b < values.length; b++) {
                dominates[a][b] = !ruledOut[a] && dominates(values[a], values[b]);
            }
        }
        return new Dominance(dominates, ruledOut.clone());
    }

    /** Compares all pairs with nothing ruled out. */
    public static Dominance of(double[][] values) {
        return of(values, new boolean[values.length]);
    }

    private static boolean dominates(double[] a, double[] b) {
        boolean better = false;
        for (int c = 0; c < a.length; c++) {
            if (a[c] < b[c]) {
                return false;
            }
            better |= a[c] > b[c];
        }
        return better;
    }

    /** Tells whether a dominates b. */
    public boolean dominates(int a, int b) {
        return dominates[a][b];
    }

    /** Returns the alternatives that dominate b. */
    public List<Integer> dominators(int b) {
        return IntStream.range(0, dominates.length)
                .filter(a -> dominates[a][b])
                .boxed()
                .toList();
    }

    /** Returns the alternatives that are neither dominated nor ruled out. */
    public List<Integer> undominated() {
        return IntStream.range(0, dominates.length)
                .filter(a -> !ruledOut[a] && dominators(a).isEmpty())
                .boxed()
                .toList();
    }
}
