package org.keelweigh.decision.acceptability;

import java.util.SplittableRandom;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.math3.special.Erf;

/**
 * Random numbers from which weights are made, drawn once for a seed: moving a slider reuses them, so that charts move
 * smoothly and two settings are compared on the same draws.
 *
 * <p>Two kinds. <i>Random</i>: independent uniforms, error falling as 1/√N. <i>Low discrepancy</i>: a Sobol sequence
 * (S. Joe &amp; F. Kuo 2008, as in Commons Math) with several random digital shifts; each shift gives an unbiased result
 * and their spread its error.
 */
public final class WeightBank {

    private final int criteria;
    private final int samples;
    private final int replicates;
    private final double[][] uniform;
    private final double[][] score;

    private WeightBank(double[][] uniform, int replicates) {
        this.criteria = uniform.length;
        this.samples = uniform[0].length;
        this.replicates = replicates;
        this.uniform = uniform;
        score = new double[criteria][samples];
        for (int c = 0; c < criteria; c++) {
            for (int s = 0; s < samples; s++) {
                score[c][s] = Math.sqrt(2) * Erf.erfInv(2 * uniform[c][s] - 1);
            }
        }
    }

    /**
     * Draws independent numbers.
     *
     * @param criteria at least 1
     * @param samples at least 1
     */
    public static WeightBank random(long seed, int criteria, int samples) {
        requireAtLeast("criteria", criteria, 1);
        requireAtLeast("samples", samples, 1);
        SplittableRandom random = new SplittableRandom(seed);
        double[][] uniform = new double[criteria][samples];
        for (int s = 0; s < samples; s++) {
            for (int c = 0; c < criteria; c++) {
                uniform[c][s] = open(random.nextLong() >>> 12, 0x1p-52);
            }
        }
        return new WeightBank(uniform, 1);
    }

    /**
     * Draws shifted Sobol points.
     *
     * @param points per shift: a multiple of 512, best a power of two
     * @param shifts at least 2, since their spread is the error estimate
     */
    public static WeightBank lowDiscrepancy(long seed, int criteria, int points, int shifts) {
        requireAtLeast("criteria", criteria, 1);
        requireAtLeast("shifts", shifts, 2);
        if (points < Lanes.COUNT || points % Lanes.COUNT != 0) {
            throw new IllegalArgumentException(
                    "points must be a positive multiple of " + Lanes.COUNT + " but is " + points);
        }
        SplittableRandom random = new SplittableRandom(seed);
        double[][] uniform = new double[criteria][points * shifts];
        int[][] shift = new int[shifts][criteria];
        for (int[] row : shift) {
            for (int c = 0; c < criteria; c++) {
                row[c] = random.nextInt();
            }
        }
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(criteria);
        for (int s = 0; s < points; s++) {
            double[] point = sobol.nextVector();
            for (int r = 0; r < shifts; r++) {
                for (int c = 0; c < criteria; c++) {
                    int digits = (int) (long) (point[c] * 0x1p32) ^ shift[r][c];
                    uniform[c][r * points + s] = open(Integer.toUnsignedLong(digits), 0x1p-32);
                }
            }
        }
        return new WeightBank(uniform, shifts);
    }

    /** Number of criteria. */
    public int criteria() {
        return criteria;
    }

    /** Number of samples. */
    public int samples() {
        return samples;
    }

    /** Independently randomised parts of equal size, from whose spread an error can be told; one for random banks. */
    public int replicates() {
        return replicates;
    }

    /** Uniform number in (0, 1), ends excluded. */
    double uniform(int criterion, int sample) {
        return uniform[criterion][sample];
    }

    /** Standard normal quantile of {@link #uniform}. */
    double score(int criterion, int sample) {
        return score[criterion][sample];
    }

    private static double open(long digits, double unit) {
        return (digits + 0.5) * unit;
    }

    private static void requireAtLeast(String name, int value, int least) {
        if (value < least) {
            throw new IllegalArgumentException(name + " must be at least " + least + " but is " + value);
        }
    }
}
