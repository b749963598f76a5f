package org.keelweigh.appraisal;

import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * A bank of uniform draws, one row for each uncertain thing, drawn once for a seed. Equal names give equal rows, so that what
 * two boats share turns out the same for both, and a change elsewhere leaves the row as it was (common random numbers).
 *
 * <p>Each row is a Latin hypercube row: one draw in each of {@code n} equal strata, in random order (M. McKay, R. Beckman,
 * W. Conover, <i>Technometrics</i> 21, 1979). For sums of many independent things this leaves only the error of their
 * products.
 */
final class Draws {

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private final long seed;
    private final int n;
    private final Map<String, double[]> rows = new HashMap<>();

    Draws(long seed, int n) {
        this.seed = seed;
        this.n = n;
    }

    int size() {
        return n;
    }

    /** Makes an empty bank of the same seed with so many times as many draws in a row. */
    Draws more(int times) {
        return new Draws(seed, times * n);
    }

    /** Tells the row of a name; the caller must not change it. */
    double[] uniform(String name) {
        return rows.computeIfAbsent(name, this::draw);
    }

    /** Makes a row of standard normal draws of a name. */
    double[] normal(String name) {
        double[] uniform = uniform(name);
        double[] normal = new double[n];
        for (int i = 0; i < n; i++) {
            normal[i] = NORMAL.inverseCumulativeProbability(uniform[i]);
        }
        return normal;
    }

    private double[] draw(String name) {
        SplittableRandom random = new SplittableRandom(seed ^ hash(name));
        double[] row = new double[n];
        for (int i = 0; i < n; i++) {
            int j = random.nextInt(i + 1);
            row[i] = row[j];
            row[j] = i;
        }
        for (int i = 0; i < n; i++) {
            row[i] = (row[i] + random.nextDouble(1e-9, 1)) / n;
        }
        return row;
    }

    /** FNV-1a, 64 bits: spreads names that differ in one letter. */
    private static long hash(String name) {
        long hash = 0xcbf29ce484222325L;
        for (int i = 0; i < name.length(); i++) {
            hash = (hash ^ name.charAt(i)) * 0x100000001b3L;
        }
        return hash;
    }
}
