package org.keelweigh.decision.robust;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * How much each uncertain factor moves the decision when it alone goes to its low and its high end.
 *
 * <p>What is measured is the margin of the base case's winner over the best other, not its total: a factor that lifts all
 * alternatives alike matters nothing. A negative margin means that the choice flips.
 *
 * @param winner the winner of the base case
 * @param baseMargin its margin there, in value points
 * @param bars widest swing first
 */
public record Tornado(int winner, double baseMargin, List<Bar> bars) {

    /**
     * A factor with its plausible range.
     *
     * @param name shown to people
     * @param low end of the range
     * @param base value of the base case, within the range
     * @param high end of the range
     */
    public record Factor(String name, double low, double base, double high) {

        /** Refuses ends in the wrong order. */
        public Factor {
            if (!(low <= base && base <= high)) {
                throw new IllegalArgumentException("Factor '" + name + "' must have low ≤ base ≤ high, but has " + low
                        + ", " + base + ", " + high);
            }
        }
    }

    /**
     * What one factor does.
     *
     * @param factor that was moved
     * @param marginAtLow margin of the base winner with the factor at its low end
     * @param marginAtHigh margin of the base winner with the factor at its high end
     */
    public record Bar(Factor factor, double marginAtLow, double marginAtHigh) {

        /** Returns the width of the bar in value points. */
        public double swing() {
            return Math.abs(marginAtHigh - marginAtLow);
        }

        /** Tells whether another alternative wins at one of the ends. */
        public boolean flips() {
            return marginAtLow < 0 || marginAtHigh < 0;
        }
    }

    /** Copies the bars. */
    public Tornado {
        bars = List.copyOf(bars);
    }

    /**
     * Moves one factor at a time; the function is called {@code 2 n + 1} times.
     *
     * @param totals total value of each alternative for given factor values, in the order of the factors; minus infinity
     *     for one that is ruled out then
     * @throws IllegalArgumentException if there are fewer than two alternatives or all are ruled out in the base case
     */
    public static Tornado of(List<Factor> factors, Function<double[], double[]> totals) {
        double[] base = factors.stream().mapToDouble(Factor::base).toArray();
        double[] atBase = totals.apply(base.clone());
        int winner = first(atBase);
        List<Bar> bars = new ArrayList<>();
        for (int f = 0; f < factors.size(); f++) {
            double[] moved = base.clone();
            moved[f] = factors.get(f).low();
            double low = margin(totals.apply(moved.clone()), winner);
            moved[f] = factors.get(f).high();
            double high = margin(totals.apply(moved), winner);
            bars.add(new Bar(factors.get(f), low, high));
        }
        bars.sort(Comparator.comparingDouble(Bar::swing).reversed());
        return new Tornado(winner, margin(atBase, winner), bars);
    }

    private static int first(double[] totals) {
        int first = -1;
        for (int a = 0; a < totals.length; a++) {
            if (totals[a] > (first < 0 ? Double.NEGATIVE_INFINITY : totals[first])) {
                first = a;
            }
        }
        if (first < 0 || totals.length < 2) {
            throw new IllegalArgumentException("A margin needs at least 2 alternatives, 1 of them not ruled out");
        }
        return first;
    }

    private static double margin(double[] totals, int winner) {
        double other = Double.NEGATIVE_INFINITY;
        for (int a = 0; a < totals.length; a++) {
            other = a == winner ? other : Math.max(other, totals[a]);
        }
        return totals[winner] - other;
    }
}
