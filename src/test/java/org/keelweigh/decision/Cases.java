package org.keelweigh.decision;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/** Random decisions for property tests: whole-number values, so that ties, copies and dominance do occur. */
public final class Cases {

    private static final int MOST_ALTERNATIVES = 8;
    private static final int MOST_CRITERIA = 6;

    /** A table of values with weights and flags that fit it. */
    public record Case(double[][] values, double[] weights, boolean[] ruledOut) {

        /** The same case with everything allowed. */
        public Case allAllowed() {
            return new Case(values, weights, new boolean[values.length]);
        }

        public int alternatives() {
            return values.length;
        }

        public int criteria() {
            return weights.length;
        }

        /** Shows the numbers when a property fails. */
        @Override
        public String toString() {
            return Arrays.deepToString(values) + " " + Arrays.toString(weights) + " " + Arrays.toString(ruledOut);
        }
    }

    private Cases() {}

    /** Cases of 2 to 8 alternatives and 1 to 6 criteria; weights may be zero. */
    public static Arbitrary<Case> cases() {
        return Combinators.combine(
                        Arbitraries.integers().between(2, MOST_ALTERNATIVES),
                        Arbitraries.integers().between(1, MOST_CRITERIA))
                .flatAs((rows, columns) -> sized(rows, columns, 0));
    }

    /** Cases of 2 or more criteria, all of positive weight. */
    public static Arbitrary<Case> positive() {
        return Combinators.combine(
                        Arbitraries.integers().between(2, MOST_ALTERNATIVES),
                        Arbitraries.integers().between(2, MOST_CRITERIA))
                .flatAs((rows, columns) -> sized(rows, columns, 1));
    }

    private static Arbitrary<Case> sized(int rows, int columns, int leastWeight) {
        Arbitrary<double[]> row =
                Arbitraries.integers().between(0, 100).list().ofSize(columns).map(Cases::array);
        Arbitrary<double[]> weights = Arbitraries.integers()
                .between(leastWeight, 20)
                .list()
                .ofSize(columns)
                .filter(list -> list.stream().anyMatch(w -> w > 0))
                .map(Cases::shares);
        Arbitrary<boolean[]> flags = Arbitraries.frequency(Tuple.of(4, false), Tuple.of(1, true))
                .array(boolean[].class)
                .ofSize(rows);
        return Combinators.combine(row.list().ofSize(rows), weights, flags)
                .as((values, w, out) -> new Case(values.toArray(double[][]::new), w, out));
    }

    private static double[] array(List<Integer> list) {
        return list.stream().mapToDouble(Integer::doubleValue).toArray();
    }

    private static double[] shares(List<Integer> raw) {
        double sum = raw.stream().mapToInt(Integer::intValue).sum();
        return raw.stream().mapToDouble(w -> w / sum).toArray();
    }
}
