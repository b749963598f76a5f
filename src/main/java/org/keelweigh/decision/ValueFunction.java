package org.keelweigh.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Maps a measure in its natural unit to a value from 0 to 100, piecewise linearly through given points on
 * a fixed range and constant outside it.
 *
 * <p>The range does not depend on the alternatives at hand, so adding one never changes the values of the
 * others (Monat 2009 on global against local scales).
 */
public final class ValueFunction {

    private static final double BEST = 100;

    private final double[] x;
    private final double[] y;

    /**
     * A support point of a value function.
     *
     * @param measure in the criterion's unit, finite
     * @param value 0 to 100
     */
    public record Point(double measure, double value) {

        /** Refuses a measure that is not finite and a value outside 0 to 100. */
        public Point {
            if (!Double.isFinite(measure)) {
                throw new IllegalArgumentException("The measure of a value point must be finite, but is " + measure);
            }
            if (!(value >= 0 && value <= BEST)) {
                throw new IllegalArgumentException("The value of a value point must be 0 to 100, but is " + value);
            }
        }
    }

    private ValueFunction(double[] x, double[] y) {
        this.x = x;
        this.y = y;
    }

    /**
     * Builds a value function through points.
     *
     * @param points at least two, measures strictly increasing
     * @throws IllegalArgumentException for fewer than two points, measures that do not increase or equal values
     *     throughout (such a criterion could never tell two alternatives apart)
     */
    public static ValueFunction of(List<Point> points) {
        if (points.size() < 2) {
            throw new IllegalArgumentException("A value function needs at least 2 points, but has " + points.size());
        }
        double[] x = points.stream().mapToDouble(Point::measure).toArray();
        double[] y = points.stream().mapToDouble(Point::value).toArray();
        for (int i = 1; i < x.length; i++) {
            if (x[i] <= x[i - 1]) {
                throw new IllegalArgumentException(
                        "Measures of a value function must increase, but " + x[i] + " follows " + x[i - 1]);
            }
        }
        if (Arrays.stream(y).allMatch(value -> value == y[0])) {
            throw new IllegalArgumentException("A value function must not give " + y[0] + " to every measure");
        }
        return new ValueFunction(x, y);
    }

    /** Builds a value function through points; see {@link #of(List)}. */
    public static ValueFunction of(Point... points) {
        return of(List.of(points));
    }

    /**
     * Builds the straight line from value 0 at {@code worst} to value 100 at {@code best}.
     *
     * @throws IllegalArgumentException if both ends are equal or not finite
     */
    public static ValueFunction linear(double worst, double best) {
        Point zero = new Point(worst, 0);
        Point hundred = new Point(best, BEST);
        return worst < best ? of(zero, hundred) : of(hundred, zero);
    }

    /**
     * Returns the value of a measure, 0 to 100; outside the range the value of the nearer end.
     *
     * @throws IllegalArgumentException if the measure is not a number
     */
    public double value(double measure) {
        if (Double.isNaN(measure)) {
            throw new IllegalArgumentException("A measure to be valued must be a number");
        }
        int last = x.length - 1;
        if (measure <= x[0]) {
            return y[0];
        }
        if (measure >= x[last]) {
            return y[last];
        }
        int i = segment(measure);
        return y[i] + (y[i + 1] - y[i]) * ((measure - x[i]) / (x[i + 1] - x[i]));
    }

    /**
     * Returns the marginal value: points gained per unit of the measure. At a support point the slope to its right
     * counts; outside the range it is 0.
     */
    public double marginal(double measure) {
        if (!(measure >= x[0] && measure < x[x.length - 1])) {
            return 0;
        }
        int i = segment(measure);
        return (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
    }

    private int segment(double measure) {
        int i = 0;
        while (measure >= x[i + 1]) {
            i++;
        }
        return i;
    }

    /** Returns the lower end of the range, in the criterion's unit. */
    public double lowerEnd() {
        return x[0];
    }

    /** Returns the upper end of the range, in the criterion's unit. */
    public double upperEnd() {
        return x[x.length - 1];
    }

    /** Tells whether the measure lies in the range, so that it is not clamped. */
    public boolean covers(double measure) {
        return measure >= lowerEnd() && measure <= upperEnd();
    }

    /** Returns the support points in order of their measures. */
    public List<Point> points() {
        List<Point> points = new ArrayList<>(x.length);
        for (int i = 0; i < x.length; i++) {
            points.add(new Point(x[i], y[i]));
        }
        return List.copyOf(points);
    }

    /** Tells whether the values never fall, never rise, or do both (and then rise before they fall). */
    boolean agreesWith(Direction direction) {
        int peak = 0;
        for (int i = 1; i < y.length; i++) {
            peak = y[i] > y[peak] ? i : peak;
        }
        return switch (direction) {
            case MORE_IS_BETTER -> risesUpTo(y.length - 1);
            case LESS_IS_BETTER -> fallsFrom(0);
            case MIDDLE_IS_BEST -> y[peak] > y[0] && y[peak] > y[y.length - 1] && risesUpTo(peak) && fallsFrom(peak);
        };
    }

    private boolean risesUpTo(int end) {
        for (int i = 1; i <= end; i++) {
            if (y[i] < y[i - 1]) {
                return false;
            }
        }
        return true;
    }

    private boolean fallsFrom(int start) {
        for (int i = start + 1; i < y.length; i++) {
            if (y[i] > y[i - 1]) {
                return false;
            }
        }
        return true;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ValueFunction that && Arrays.equals(x, that.x) && Arrays.equals(y, that.y);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(x) + Arrays.hashCode(y);
    }

    @Override
    public String toString() {
        return "ValueFunction" + points();
    }
}
