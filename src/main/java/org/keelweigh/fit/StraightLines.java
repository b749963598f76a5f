package org.keelweigh.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * A function of straight lines between points; beyond the first and last point it stays level.
 *
 * @param points the points by rising measure, at least one
 */
public record StraightLines(List<Point> points) {

    /**
     * One corner.
     *
     * @param measure where
     * @param points how much, 0 to 100
     */
    public record Point(double measure, double points) {

        public Point {
            if (!Double.isFinite(measure) || !(points >= 0 && points <= 100)) {
                throw new IllegalArgumentException(
                        "A point needs a finite measure and 0 to 100 points, not " + measure + ":" + points);
            }
        }
    }

    public StraightLines {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("A value function needs at least 1 point");
        }
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i).measure() > points.get(i - 1).measure())) {
                throw new IllegalArgumentException("The points must stand by rising measure, but "
                        + points.get(i).measure() + " follows "
                        + points.get(i - 1).measure());
            }
        }
    }

    /**
     * Reads points written as {@code 0:55 0.3:85}.
     *
     * @throws IllegalArgumentException naming what cannot be read
     */
    public static StraightLines parse(String text) {
        List<Point> points = new ArrayList<>();
        for (String pair : text.trim().split("\\s+")) {
            String[] halves = pair.split(":");
            try {
                points.add(new Point(Double.parseDouble(halves[0]), Double.parseDouble(halves[1])));
            } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
                throw new IllegalArgumentException("\"" + pair + "\" is not a measure and points such as 0.3:85", e);
            }
        }
        return new StraightLines(points);
    }

    /** Tells the points, 0 to 100, at {@code measure}. */
    public double at(double measure) {
        if (measure <= points.getFirst().measure()) {
            return points.getFirst().points();
        }
        for (int i = 1; i < points.size(); i++) {
            Point to = points.get(i);
            if (measure <= to.measure()) {
                Point from = points.get(i - 1);
                double part = (measure - from.measure()) / (to.measure() - from.measure());
                return from.points() + part * (to.points() - from.points());
            }
        }
        return points.getLast().points();
    }
}
