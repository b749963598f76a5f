package org.keelweigh.benchmark;

import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/** Plain double arithmetic with the JDK's generators: what the fast kernel is compared with. */
public final class NaiveAcceptability {

    private final double[][] base;
    private final double[][] sd;
    public final long[][] rank;
    public final double[][] favouring;

    public NaiveAcceptability(double[][] base, double[][] sd) {
        this.base = base;
        this.sd = sd;
        rank = new long[base.length][base.length];
        favouring = new double[base.length][base[0].length];
    }

    public NaiveAcceptability run(long seed, int samples) {
        RandomGenerator random =
                RandomGeneratorFactory.of("Xoroshiro128PlusPlus").create(seed);
        int criteria = base[0].length;
        double[] weight = new double[criteria];
        double[] value = new double[base.length];
        for (int s = 0; s < samples; s++) {
            double sum = 0;
            for (int c = 0; c < criteria; c++) {
                sum += weight[c] = random.nextExponential();
            }
            for (int a = 0; a < base.length; a++) {
                value[a] = 0;
                for (int c = 0; c < criteria; c++) {
                    double measure = base[a][c] + sd[a][c] * random.nextGaussian();
                    value[a] += weight[c] / sum * Math.min(1, Math.max(0, measure));
                }
            }
            count(value, weight, sum);
        }
        return this;
    }

    private void count(double[] value, double[] weight, double sum) {
        for (int a = 0; a < value.length; a++) {
            int better = 0;
            for (double other : value) {
                better += other > value[a] ? 1 : 0;
            }
            rank[a][better]++;
            if (better == 0) {
                for (int c = 0; c < weight.length; c++) {
                    favouring[a][c] += weight[c] / sum;
                }
            }
        }
    }
}
