package org.keelweigh.decision.information;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Value of learning a fact that moves several alternatives, estimated from one Monte Carlo sample.
 *
 * <p>The expected value of each alternative given the fact is estimated by regression on the fact: a cubic, or the mean
 * of bins of neighbouring samples (M. Strong &amp; J. Oakley 2013; M. Strong, J. Oakley &amp; A. Brennan 2014). Then
 * {@code EVPPI = mean_s max_a g_a(x_s) − max_a mean_s g_a(x_s)}. Small samples and small bins bias it upwards.
 */
public final class SharedFact {

    /** Smaller bins bias the estimate upwards: with 20 samples a bin by a fifth of its value in our measurement. */
    public static final int SMALLEST_BIN = 500;

    private static final int SMALLEST_SAMPLE = 100;
    private static final int COEFFICIENTS = 4;

    private SharedFact() {}

    /**
     * An estimate of a value of information.
     *
     * @param value at least 0
     * @param standardError of the sampling, bias apart
     */
    public record Estimate(double value, double standardError) {}

    /**
     * Estimates the value of knowing everything.
     *
     * @param values {@code [alternative][sample]}, at least one alternative and 100 samples
     */
    public static Estimate perfect(double[][] values) {
        requireSamples(values, values.length == 0 ? 0 : values[0].length);
        return gain(values);
    }

    /**
     * Estimates with a least-squares cubic: for facts that act smoothly.
     *
     * @param values {@code [alternative][sample]}
     * @param fact its value in each sample
     */
    public static Estimate byCubic(double[][] values, double[] fact) {
        requireSamples(values, fact.length);
        double[][] basis = orthonormalPowers(fact);
        double[][] fitted = new double[values.length][];
        for (int a = 0; a < values.length; a++) {
            fitted[a] = projected(values[a], basis);
        }
        return bounded(gain(fitted), values);
    }

    /**
     * Estimates with the means of bins of samples sorted by the fact: for facts that act in jumps.
     *
     * @param binSize at least {@link #SMALLEST_BIN}
     */
    public static Estimate byBins(double[][] values, double[] fact, int binSize) {
        requireSamples(values, fact.length);
        if (binSize < SMALLEST_BIN) {
            throw new IllegalArgumentException("bin size must be at least " + SMALLEST_BIN + " but is " + binSize);
        }
        int[] order = IntStream.range(0, fact.length)
                .boxed()
                .sorted((i, j) -> Double.compare(fact[i], fact[j]))
                .mapToInt(i -> i)
                .toArray();
        int bins = Math.max(1, fact.length / binSize);
        double[][] fitted = new double[values.length][fact.length];
        for (int bin = 0; bin < bins; bin++) {
            int from = (int) ((long) fact.length * bin / bins);
            int to = (int) ((long) fact.length * (bin + 1) / bins);
            for (int a = 0; a < values.length; a++) {
                double[] row = values[a];
                double mean = Arrays.stream(order, from, to)
                        .mapToDouble(s -> row[s])
                        .average()
                        .orElseThrow();
                for (int i = from; i < to; i++) {
                    fitted[a][order[i]] = mean;
                }
            }
        }
        return bounded(gain(fitted), values);
    }

    private static Estimate gain(double[][] given) {
        int samples = given[0].length;
        int best = 0;
        double bestMean = Double.NEGATIVE_INFINITY;
        for (int a = 0; a < given.length; a++) {
            double mean = Arrays.stream(given[a]).sum() / samples;
            if (mean > bestMean) {
                bestMean = mean;
                best = a;
            }
        }
        double sum = 0;
        double squares = 0;
        for (int s = 0; s < samples; s++) {
            double most = given[best][s];
            for (double[] row : given) {
                most = Math.max(most, row[s]);
            }
            double regret = most - given[best][s];
            sum += regret;
            squares += regret * regret;
        }
        double mean = sum / samples;
        double variance = Math.max(0, squares / samples - mean * mean);
        return new Estimate(mean, Math.sqrt(variance / samples));
    }

    /** A part cannot be worth more than the whole; a fit may say so by chance. */
    private static Estimate bounded(Estimate part, double[][] values) {
        double whole = gain(values).value();
        return part.value() <= whole ? part : new Estimate(whole, part.standardError());
    }

    /** Orthonormal polynomials of degree 0 to 3 on the sample, by Gram and Schmidt done twice. */
    private static double[][] orthonormalPowers(double[] fact) {
        int n = fact.length;
        double mean = Arrays.stream(fact).average().orElseThrow();
        double size =
                Math.max(Arrays.stream(fact).map(x -> Math.abs(x - mean)).max().orElseThrow(), Double.MIN_NORMAL);
        double[][] basis = new double[COEFFICIENTS][n];
        for (int degree = 0; degree < COEFFICIENTS; degree++) {
            for (int s = 0; s < n; s++) {
                basis[degree][s] = Math.pow((fact[s] - mean) / size, degree);
            }
            for (int pass = 0; pass < 2; pass++) {
                for (int lower = 0; lower < degree; lower++) {
                    addMultiple(basis[degree], -dot(basis[degree], basis[lower]), basis[lower]);
                }
            }
            double norm = Math.sqrt(dot(basis[degree], basis[degree]));
            // A fact with fewer distinct values than powers: the surplus power tells nothing new
            double scale = norm > 1e-9 * Math.sqrt(n) ? 1 / norm : 0;
            for (int s = 0; s < n; s++) {
                basis[degree][s] *= scale;
            }
        }
        return basis;
    }

    private static double[] projected(double[] value, double[][] basis) {
        double[] fitted = new double[value.length];
        for (double[] direction : basis) {
            addMultiple(fitted, dot(value, direction), direction);
        }
        return fitted;
    }

    private static double dot(double[] x, double[] y) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += x[i] * y[i];
        }
        return sum;
    }

    private static void addMultiple(double[] x, double factor, double[] y) {
        for (int i = 0; i < x.length; i++) {
            x[i] += factor * y[i];
        }
    }

    private static void requireSamples(double[][] values, int samples) {
        if (values.length == 0 || samples < SMALLEST_SAMPLE) {
            throw new IllegalArgumentException("there must be at least one alternative and " + SMALLEST_SAMPLE
                    + " samples but there are " + values.length + " and " + samples);
        }
        for (double[] row : values) {
            if (row.length != samples) {
                throw new IllegalArgumentException("each alternative must have " + samples + " samples");
            }
        }
    }
}
