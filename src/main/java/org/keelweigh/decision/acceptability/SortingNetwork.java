package org.keelweigh.decision.acceptability;

import java.util.ArrayList;
import java.util.List;

/**
 * Sorts rows lane by lane with a fixed list of compare-exchange steps, so that all lanes take the same path.
 *
 * <p>The steps are Batcher's merge exchange (D. Knuth, <i>The Art of Computer Programming</i> 3, 5.2.2, algorithm M):
 * 97 steps for 20 rows, where comparing all pairs takes 190.
 */
final class SortingNetwork {

    private final int[] low;
    private final int[] high;

    SortingNetwork(int rows) {
        List<int[]> steps = steps(rows);
        low = steps.stream().mapToInt(step -> step[0]).toArray();
        high = steps.stream().mapToInt(step -> step[1]).toArray();
    }

    /** Sorts {@code rows[first ..]} ascending in every lane. */
    void sort(int[][] rows, int first) {
        for (int k = 0; k < low.length; k++) {
            Lanes.exchange(rows[first + low[k]], rows[first + high[k]]);
        }
    }

    private static List<int[]> steps(int n) {
        List<int[]> steps = new ArrayList<>();
        if (n < 2) {
            return steps;
        }
        int top = Integer.highestOneBit(n - 1);
        for (int p = top; p > 0; p >>= 1) {
            int q = top;
            int r = 0;
            int d = p;
            while (true) {
                for (int i = 0; i < n - d; i++) {
                    if ((i & p) == r) {
                        steps.add(new int[] {i, i + d});
                    }
                }
                if (q == p) {
                    break;
                }
                d = q - p;
                q >>= 1;
                r = p;
            }
        }
        return steps;
    }
}
