package org.keelweigh.appraisal;

import java.util.Arrays;

/**
 * A discrete distribution of a boat's total, kept to a bounded number of points: those next to each other are merged at their
 * common mean, so that the mean never moves and the spread shrinks by less than a merged step.
 */
record Spread(double[] probability, double[] value) {

    private static final int MOST = 96;

    static Spread at(double value) {
        return new Spread(new double[] {1}, new double[] {value});
    }

    /** Adds an independent move: to {@code after[r] − from} with chance {@code chance[r]}. */
    Spread plus(double[] chance, double[] after, double from) {
        int n = probability.length * chance.length;
        double[][] points = new double[n][];
        for (int i = 0, k = 0; i < probability.length; i++) {
            for (int r = 0; r < chance.length; r++, k++) {
                points[k] = new double[] {value[i] + after[r] - from, probability[i] * chance[r]};
            }
        }
        Arrays.sort(points, (a, b) -> Double.compare(a[0], b[0]));
        return merged(points);
    }

    private static Spread merged(double[][] points) {
        int groups = Math.min(MOST, points.length);
        double[] chance = new double[groups];
        double[] mean = new double[groups];
        for (int i = 0; i < points.length; i++) {
            int group = (int) ((long) i * groups / points.length);
            chance[group] += points[i][1];
            mean[group] += points[i][1] * points[i][0];
        }
        for (int g = 0; g < groups; g++) {
            mean[g] = chance[g] > 0 ? mean[g] / chance[g] : points[g * points.length / groups][0];
        }
        return new Spread(chance, mean);
    }
}
