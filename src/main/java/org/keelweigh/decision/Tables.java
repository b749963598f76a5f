package org.keelweigh.decision;

/** Checks what a caller hands over as tables, weights and flags, and measures how far columns spread. */
public final class Tables {

    /** How far a sum of weights may be from one: far above rounding, far below anything a person would state. */
    private static final double SUM_TOLERANCE = 1e-9;

    private Tables() {}

    /**
     * Returns the number of columns after checking that a table is rectangular, not empty and finite.
     *
     * @throws IllegalArgumentException naming the first cell or row that is wrong
     */
    public static int requireTable(double[][] table) {
        if (table.length == 0 || table[0].length == 0) {
            throw new IllegalArgumentException("A table needs at least 1 alternative and 1 criterion");
        }
        int columns = table[0].length;
        for (int a = 0; a < table.length; a++) {
            if (table[a].length != columns) {
                throw new IllegalArgumentException(
                        "Row " + a + " has " + table[a].length + " columns instead of " + columns);
            }
            for (int c = 0; c < columns; c++) {
                if (!Double.isFinite(table[a][c])) {
                    throw new IllegalArgumentException(
                            "Row " + a + ", column " + c + " must be finite, but is " + table[a][c]);
                }
            }
        }
        return columns;
    }

    /**
     * Checks that there is one non-negative weight per column and that they sum to one.
     *
     * @throws IllegalArgumentException naming the weight or the sum that is wrong
     */
    public static void requireWeights(double[] weights, int columns) {
        if (weights.length != columns) {
            throw new IllegalArgumentException("There are " + weights.length + " weights for " + columns + " criteria");
        }
        double sum = 0;
        for (double weight : weights) {
            if (!(weight >= 0)) {
                throw new IllegalArgumentException("A weight must be 0 or more, but is " + weight);
            }
            sum += weight;
        }
        if (!(Math.abs(sum - 1) <= SUM_TOLERANCE)) {
            throw new IllegalArgumentException("Weights must sum to 1, but sum to " + sum);
        }
    }

    /**
     * Checks that there is one flag per alternative.
     *
     * @throws IllegalArgumentException if the lengths differ
     */
    public static void requireFlags(boolean[] ruledOut, int alternatives) {
        if (ruledOut.length != alternatives) {
            throw new IllegalArgumentException(
                    "There are " + ruledOut.length + " ruled-out flags for " + alternatives + " alternatives");
        }
    }

    /**
     * Checks that an index names an existing row.
     *
     * @throws IllegalArgumentException naming index and bound
     */
    public static void requireIndex(int index, int size) {
        if (index < 0 || index >= size) {
            throw new IllegalArgumentException("An index must be 0 to " + (size - 1) + ", but is " + index);
        }
    }

    /** Returns the largest minus the smallest entry of each column, over the rows that are not ruled out. */
    public static double[] spreads(double[][] table, boolean[] ruledOut) {
        int columns = requireTable(table);
        requireFlags(ruledOut, table.length);
        double[] spreads = new double[columns];
        for (int c = 0; c < columns; c++) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int a = 0; a < table.length; a++) {
                if (!ruledOut[a]) {
                    low = Math.min(low, table[a][c]);
                    high = Math.max(high, table[a][c]);
                }
            }
            spreads[c] = high > low ? high - low : 0;
        }
        return spreads;
    }
}
