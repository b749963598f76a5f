package org.keelweigh.decision;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The seven offices of {@code oracle/offices.csv}, where their source is told. */
public final class Offices {

    public static final double[] WEIGHTS = {0.32, 0.26, 0.23, 0.10, 0.06, 0.03};
    public static final int ADDISON = 0;
    public static final int CARLISLE = 2;
    public static final int ELTON = 4;
    public static final int GORTON = 6;

    private static final List<String[]> ROWS = rows();

    private Offices() {}

    private static List<String[]> rows() {
        try (InputStream in = Offices.class.getResourceAsStream("/oracle/offices.csv")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(","))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static double[][] values() {
        return ROWS.stream().map(row -> columns(row, 1, 7)).toArray(double[][]::new);
    }

    public static double[] totals() {
        return column(7);
    }

    public static double[] unroundedTotals() {
        return column(8);
    }

    public static double[] rents() {
        return column(9);
    }

    private static double[] column(int column) {
        return ROWS.stream().mapToDouble(row -> Double.parseDouble(row[column])).toArray();
    }

    private static double[] columns(String[] row, int from, int to) {
        double[] numbers = new double[to - from];
        for (int c = from; c < to; c++) {
            numbers[c - from] = Double.parseDouble(row[c]);
        }
        return numbers;
    }
}
