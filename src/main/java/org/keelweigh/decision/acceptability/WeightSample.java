package org.keelweigh.decision.acceptability;

import java.util.Objects;

/**
 * Sampled weights: non-negative, one set of weights per sample, each set adding up to one.
 */
public final class WeightSample {

    private final int criteria;
    private final int samples;
    private final int replicates;
    private final float[][][] rows;

    private WeightSample(int criteria, int samples, int replicates, float[][][] rows) {
        this.criteria = criteria;
        this.samples = samples;
        this.replicates = replicates;
        this.rows = rows;
    }

    /** Makes one set of weights at a time. */
    @FunctionalInterface
    interface Draw {
        void weights(int sample, double[] into);
    }

    static WeightSample of(int criteria, int samples, int replicates, Draw draw) {
        float[][][] rows = new float[Lanes.blocks(samples)][criteria][Lanes.COUNT];
        double[] weights = new double[criteria];
        for (int s = 0; s < samples; s++) {
            draw.weights(s, weights);
            for (int c = 0; c < criteria; c++) {
                rows[s / Lanes.COUNT][c][s % Lanes.COUNT] = (float) weights[c];
            }
        }
        return new WeightSample(criteria, samples, replicates, rows);
    }

    /** Number of criteria. */
    public int criteria() {
        return criteria;
    }

    /** Number of samples. */
    public int samples() {
        return samples;
    }

    /** Independently randomised parts of equal size; one for plain random weights. */
    public int replicates() {
        return replicates;
    }

    /** One weight of one sample, 0 to 1. */
    public double weight(int criterion, int sample) {
        Objects.checkIndex(sample, samples);
        return rows[sample / Lanes.COUNT][criterion][sample % Lanes.COUNT];
    }

    /** A copy of the weights of one sample. */
    public double[] weights(int sample) {
        double[] weights = new double[criteria];
        for (int c = 0; c < criteria; c++) {
            weights[c] = weight(c, sample);
        }
        return weights;
    }

    /** Mean weights. */
    public double[] mean() {
        double[] mean = new double[criteria];
        for (int s = 0; s < samples; s++) {
            for (int c = 0; c < criteria; c++) {
                mean[c] += weight(c, s);
            }
        }
        for (int c = 0; c < criteria; c++) {
            mean[c] /= samples;
        }
        return mean;
    }

    float[][] block(int block) {
        return rows[block];
    }
}
