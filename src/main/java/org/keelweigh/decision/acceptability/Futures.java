package org.keelweigh.decision.acceptability;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Values of alternatives on criteria in sampled futures, drawn once and reused, so that a change of weights is judged on
 * the same futures (common random numbers) and results move smoothly.
 *
 * <p>Most values are certain and held as one number; uncertain ones hold one number per future, as {@code float}: their
 * rounding, 6e-8 of the value, is far below any sampling error. Larger values are better. All values share one scale,
 * whatever its ends.
 */
public final class Futures {

    private final int alternatives;
    private final int criteria;
    private final int samples;
    private final double[][] mean;
    private final float[][] @Nullable [][] sampled;
    private final float low;
    private final float high;

    private Futures(Builder builder) {
        alternatives = builder.alternatives;
        criteria = builder.criteria;
        samples = builder.samples;
        mean = builder.mean.clone();
        for (int a = 0; a < alternatives; a++) {
            mean[a] = builder.mean[a].clone();
            for (int c = 0; c < criteria; c++) {
                if (Double.isNaN(mean[a][c])) {
                    throw new IllegalArgumentException("no value for alternative " + a + ", criterion " + c);
                }
            }
        }
        sampled = new float[alternatives][][][];
        for (int a = 0; a < alternatives; a++) {
            sampled[a] = builder.sampled[a].clone();
        }
        low = builder.low;
        high = builder.high;
    }

    /**
     * Starts a bank.
     *
     * @param alternatives 1 to 1024
     * @param criteria at least 1
     * @param samples futures, at least 1
     * @throws IllegalArgumentException outside these bounds
     */
    public static Builder builder(int alternatives, int criteria, int samples) {
        return new Builder(alternatives, criteria, samples);
    }

    /**
     * Makes a bank in which every value is certain.
     *
     * @param values {@code [alternative][criterion]}, finite
     * @throws IllegalArgumentException when empty, ragged or not finite
     */
    public static Futures certain(double[][] values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("values must have at least one alternative");
        }
        Builder builder = new Builder(values.length, values[0].length, 1);
        for (int a = 0; a < values.length; a++) {
            if (values[a].length != values[0].length) {
                throw new IllegalArgumentException("alternative " + a + " has " + values[a].length
                        + " values, alternative 0 has " + values[0].length);
            }
            for (int c = 0; c < values[a].length; c++) {
                builder.certain(a, c, values[a][c]);
            }
        }
        return builder.build();
    }

    /** Number of alternatives. */
    public int alternatives() {
        return alternatives;
    }

    /** Number of criteria. */
    public int criteria() {
        return criteria;
    }

    /** Number of futures; one when everything is certain. */
    public int samples() {
        return samples;
    }

    /** Tells whether the value is the same in all futures. */
    public boolean isCertain(int alternative, int criterion) {
        return sampled[alternative][criterion] == null;
    }

    /** Tells whether all values are the same in all futures. */
    public boolean isCertain() {
        for (float[][][] row : sampled) {
            for (float[][] cell : row) {
                if (cell != null) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Mean over futures. */
    public double mean(int alternative, int criterion) {
        return mean[alternative][criterion];
    }

    /** Value in the given future, {@code 0 .. samples−1}. */
    public double value(int alternative, int criterion, int sample) {
        Objects.checkIndex(sample, samples);
        float[][] cell = sampled[alternative][criterion];
        return cell == null ? mean[alternative][criterion] : cell[sample / Lanes.COUNT][sample % Lanes.COUNT];
    }

    float low() {
        return low;
    }

    float high() {
        return high;
    }

    /** Adds {@code weight · value} of all criteria for one block of futures. */
    void addTotals(int alternative, int block, float[][] weight, float[] total) {
        for (int c = 0; c < criteria; c++) {
            float[][] cell = sampled[alternative][c];
            if (cell == null) {
                Lanes.addCertain(weight[c], (float) mean[alternative][c], total);
            } else {
                Lanes.addSampled(weight[c], cell[block], total);
            }
        }
    }

    /** Collects the values of a bank. */
    public static final class Builder {

        private final int alternatives;
        private final int criteria;
        private final int samples;
        private final double[][] mean;
        private final float[][] @Nullable [][] sampled;
        private float low = Float.POSITIVE_INFINITY;
        private float high = Float.NEGATIVE_INFINITY;

        private Builder(int alternatives, int criteria, int samples) {
            this.alternatives = within("alternatives", alternatives, 1, 1024);
            this.criteria = within("criteria", criteria, 1, 1024);
            this.samples = within("samples", samples, 1, 100_000_000);
            mean = new double[alternatives][criteria];
            for (double[] row : mean) {
                Arrays.fill(row, Double.NaN);
            }
            sampled = new float[alternatives][criteria][][];
        }

        /** Sets a value that is the same in all futures. */
        public Builder certain(int alternative, int criterion, double value) {
            mean[alternative][criterion] = noted(value, alternative, criterion);
            sampled[alternative][criterion] = null;
            return this;
        }

        /**
         * Sets a value that differs between futures.
         *
         * @param values one finite value per future; copied
         */
        public Builder sampled(int alternative, int criterion, double[] values) {
            if (values.length != samples) {
                throw new IllegalArgumentException(
                        "values must hold " + samples + " futures but hold " + values.length);
            }
            float[][] cell = new float[Lanes.blocks(samples)][Lanes.COUNT];
            double sum = 0;
            for (int s = 0; s < samples; s++) {
                sum += values[s];
                cell[s / Lanes.COUNT][s % Lanes.COUNT] = (float) noted(values[s], alternative, criterion);
            }
            mean[alternative][criterion] = sum / samples;
            sampled[alternative][criterion] = cell;
            return this;
        }

        /** Makes the bank; every value must have been set. */
        public Futures build() {
            return new Futures(this);
        }

        private double noted(double value, int alternative, int criterion) {
            if (!(Math.abs(value) <= 1e30)) {
                throw new IllegalArgumentException("value of alternative " + alternative + ", criterion " + criterion
                        + " must be finite and at most 1e30 in size but is " + value);
            }
            low = Math.min(low, (float) value);
            high = Math.max(high, (float) value);
            return value;
        }

        private static int within(String name, int value, int least, int most) {
            if (value < least || value > most) {
                throw new IllegalArgumentException(name + " must be " + least + " to " + most + " but is " + value);
            }
            return value;
        }
    }
}
