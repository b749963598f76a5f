package org.keelweigh.decision.acceptability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;

class CounterNoiseTests {

    private static final int INPUTS = 1 << 20;

    /** Every 4096th of the 2^32 inputs, taken in a scrambled order; the variance then has an error of about 1.4e-3. */
    private static float[] transformed() {
        float[] z = new float[INPUTS];
        for (int i = 0; i < INPUTS; i++) {
            z[i] = CounterNoise.normalOf((i << 12 | i >>> 8 & 0xfff) * 0x9e3779b1);
        }
        return z;
    }

    @Test
    void transformsUniformToNormal() {
        float[] z = transformed();
        Arrays.sort(z);
        double distance = 0;
        double[] moment = new double[7];
        for (int i = 0; i < INPUTS; i++) {
            double normal = 0.5 * Erf.erfc(-z[i] / Math.sqrt(2));
            distance = Math.max(distance, Math.abs(normal - (i + 0.5) / INPUTS));
            for (int k = 1; k <= 6; k++) {
                moment[k] += Math.pow(z[i], k) / INPUTS;
            }
        }
        // 2.8e-4 over all inputs; sampling adds up to 1.36/√1e6 = 1.4e-3
        assertThat(distance).isLessThan(2e-3);
        assertThat(moment[1]).isCloseTo(0, within(4e-3));
        assertThat(moment[2]).isCloseTo(1, within(6e-3));
        assertThat(moment[3]).isCloseTo(0, within(0.016));
        assertThat(moment[4]).isCloseTo(3, within(0.04));
        assertThat(moment[6]).isCloseTo(15, within(0.5));
    }

    @Test
    void reachesTheTailsInTheRightNumber() {
        float[] z = transformed();
        for (double limit : new double[] {2, 3, 4}) {
            double share = 0;
            for (float x : z) {
                share += Math.abs(x) > limit ? 1.0 / INPUTS : 0;
            }
            double exact = Erf.erfc(limit / Math.sqrt(2));
            double error = Math.sqrt(exact / INPUTS);
            assertThat(share).isCloseTo(exact, within(4 * error + 0.06 * exact));
        }
    }

    @Test
    void fillsRowsWithTheSameTransform() {
        CounterNoise noise = new CounterNoise(2);
        noise.start(1, 0);
        float[] z = new float[Lanes.COUNT];
        noise.normal(0, z);
        double mean = 0;
        for (float x : z) {
            assertThat(Math.abs(x)).isLessThan(5.9f);
            mean += x / Lanes.COUNT;
        }
        assertThat(mean).isCloseTo(0, within(4 / Math.sqrt(Lanes.COUNT)));
    }

    /** Rows and lanes must not go together: 60 rows, all pairs, 51 200 lanes; also in squares, where sums would show it. */
    @Test
    void drawsIndependentRows() {
        int rows = 60;
        int blocks = 100;
        double[][] product = new double[rows][rows];
        double[][] squares = new double[rows][rows];
        CounterNoise noise = new CounterNoise(rows);
        float[][] z = new float[rows][Lanes.COUNT];
        int n = blocks * Lanes.COUNT;
        for (int block = 0; block < blocks; block++) {
            noise.start(99, block);
            for (int k = 0; k < rows; k++) {
                noise.normal(k, z[k]);
            }
            for (int j = 0; j < rows; j++) {
                for (int k = 0; k < j; k++) {
                    for (int i = 0; i < Lanes.COUNT; i++) {
                        double xy = z[j][i] * z[k][i];
                        product[j][k] += xy / n;
                        squares[j][k] += (z[j][i] * z[j][i] - 1) * (z[k][i] * z[k][i] - 1) / n;
                    }
                }
            }
        }
        double largest = 0;
        double largestOfSquares = 0;
        for (int j = 0; j < rows; j++) {
            for (int k = 0; k < j; k++) {
                largest = Math.max(largest, Math.abs(product[j][k]));
                largestOfSquares = Math.max(largestOfSquares, Math.abs(squares[j][k]));
            }
        }
        // Standard errors 1/√n and 2/√n; the largest of 1 770 stays below 4.5 of them
        assertThat(largest).isLessThan(4.5 / Math.sqrt(n));
        assertThat(largestOfSquares).isLessThan(2 * 5.0 / Math.sqrt(n));
    }

    @Test
    void drawsUniformNumbers() {
        CounterNoise noise = new CounterNoise(1);
        int[] row = new int[Lanes.COUNT];
        long[] count = new long[16];
        int blocks = 500;
        for (int block = 0; block < blocks; block++) {
            noise.start(7, block);
            noise.uniform(0, row);
            for (int x : row) {
                count[x >>> 27]++;
            }
        }
        double expected = blocks * Lanes.COUNT / 16.0;
        double chiSquare = Arrays.stream(count)
                .mapToDouble(k -> (k - expected) * (k - expected) / expected)
                .sum();
        // 15 degrees of freedom: 99.9 % point 37.7
        assertThat(chiSquare).isLessThan(37.7);
    }

    @Test
    void differsBetweenSeedsAndBlocks() {
        CounterNoise noise = new CounterNoise(1);
        int[] first = new int[Lanes.COUNT];
        int[] other = new int[Lanes.COUNT];
        noise.start(7, 0);
        noise.uniform(0, first);
        noise.start(7, 1);
        noise.uniform(0, other);
        assertThat(other).isNotEqualTo(first);
        noise.start(8, 0);
        noise.uniform(0, other);
        assertThat(other).isNotEqualTo(first);
        noise.start(7, 0);
        noise.uniform(0, other);
        assertThat(other).isEqualTo(first);
    }
}
