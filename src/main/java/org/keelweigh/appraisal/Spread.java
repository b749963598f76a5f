package org.keelweigh.appraisal;

/**
 * A discrete distribution of a boat's total, kept to a bounded number of points: those that fall into the same of
 * {@value #CELLS} equal cells are merged at their common mean, so that the mean never moves and the ends stay apart.
 */
record Spread(double[] probability, double[] value) {

    private static final int CELLS = 512;

    static Spread at(double value) {
        return new Spread(new double[] {1}, new double[] {value});
    }

    /** Adds an independent move: to {@code after[r] − from} with chance {@code chance[r]}. */
    Spread plus(double[] chance, double[] after, double from) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double each : value) {
            for (double moved : after) {
                low = Math.min(low, each + moved - from);
                high = Math.max(high, each + moved - from);
            }
        }
        double width = (high - low) / CELLS;
        double[] cell = new double[CELLS];
        double[] sum = new double[CELLS];
        for (int i = 0; i < value.length; i++) {
            for (int r = 0; r < after.length; r++) {
                double moved = value[i] + after[r] - from;
                int at = width > 0 ? Math.min(CELLS - 1, (int) ((moved - low) / width)) : 0;
                cell[at] += probability[i] * chance[r];
                sum[at] += probability[i] * chance[r] * moved;
            }
        }
        return occupied(cell, sum);
    }

    private static Spread occupied(double[] cell, double[] sum) {
        int count = 0;
        for (double each : cell) {
            count += each > 0 ? 1 : 0;
        }
        double[] chance = new double[count];
        double[] mean = new double[count];
        for (int i = 0, k = 0; i < cell.length; i++) {
            if (cell[i] > 0) {
                chance[k] = cell[i];
                mean[k++] = sum[i] / cell[i];
            }
        }
        return new Spread(chance, mean);
    }
}
