package org.keelweigh.decision.robust;

import java.util.function.DoubleUnaryOperator;

/** Where a monotone function crosses zero: the price at which an alternative ties with the best other, for instance. */
public sealed interface BreakEven {

    /**
     * The function crosses zero.
     *
     * @param at where, between lo and hi; at a jump across zero, the place of the jump
     */
    record Found(double at) implements BreakEven {}

    /** The function is positive on the whole interval. */
    record AlwaysAbove() implements BreakEven {}

    /** The function is negative on the whole interval. */
    record AlwaysBelow() implements BreakEven {}

    /**
     * Finds where a function crosses zero, by Brent's method.
     *
     * @param function monotone on the interval, rising or falling, constant stretches allowed
     * @param lo lower end
     * @param hi upper end, above {@code lo}
     * @throws IllegalArgumentException if the interval is empty or not finite, or if samples show that the function is
     *     not finite or not monotone
     */
    static BreakEven find(DoubleUnaryOperator function, double lo, double hi) {
        return CrossingSearch.find(function, lo, hi);
    }
}
