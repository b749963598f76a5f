package org.keelweigh.decision.acceptability;

import java.util.Arrays;

/**
 * Acceptability when every measure has an independent normal error and nothing is known of the weights:
 * {@code V_a = Σ_c w_c · min(1, max(0, base_ac + sd_ac·z))}, weights uniform on the simplex.
 *
 * <p>Everything is drawn inside the kernel; see {@link CounterNoise} for the normal numbers. Weights are the gaps of
 * sorted uniform numbers, exactly uniform on the simplex, since sorting needs no logarithm.
 */
public final class PerturbedMeasures {

    private final int alternatives;
    private final int criteria;
    private final float[][] base;
    private final float[][] sd;

    /**
     * @param base {@code [alternative][criterion]}, finite
     * @param sd same shape, non-negative
     * @throws IllegalArgumentException when empty, ragged or out of range
     */
    public PerturbedMeasures(double[][] base, double[][] sd) {
        alternatives = base.length;
        criteria = alternatives == 0 ? 0 : base[0].length;
        if (alternatives < 1 || alternatives > 1024 || criteria < 1 || sd.length != alternatives) {
            throw new IllegalArgumentException(
                    "base and sd must have the same 1 to 1024 alternatives and at least one criterion");
        }
        this.base = new float[alternatives][criteria];
        this.sd = new float[alternatives][criteria];
        for (int a = 0; a < alternatives; a++) {
            if (base[a].length != criteria || sd[a].length != criteria) {
                throw new IllegalArgumentException("alternative " + a + " must have " + criteria + " measures");
            }
            for (int c = 0; c < criteria; c++) {
                if (!(Math.abs(base[a][c]) <= 1e6 && sd[a][c] >= 0 && sd[a][c] <= 1e6)) {
                    throw new IllegalArgumentException(
                            "measure " + a + ", " + c + " must be at most 1e6 in size with sd 0 to 1e6 but is "
                                    + base[a][c] + ", sd " + sd[a][c]);
                }
                this.base[a][c] = (float) base[a][c];
                this.sd[a][c] = (float) sd[a][c];
            }
        }
    }

    /**
     * Samples, ranks and counts. The answer depends on seed and samples only, not on threads.
     *
     * @param samples at least 1
     * @param threads 1 to 64
     */
    public Acceptability analyse(long seed, int samples, int threads) {
        if (samples < 1) {
            throw new IllegalArgumentException("samples must be at least 1 but is " + samples);
        }
        Tally tally =
                Blocks.tally(Lanes.blocks(samples), Blocks.requireThreads(threads), () -> new Worker(seed, samples));
        int[] slot = new int[alternatives];
        Arrays.setAll(slot, a -> a);
        return new Acceptability(criteria, samples, slot, alternatives, new Tally[] {tally}, false);
    }

    private final class Worker implements Blocks.Worker {

        private final long seed;
        private final int samples;
        private final CounterNoise noise = new CounterNoise(criteria - 1 + alternatives * criteria);
        private final SortingNetwork sorting = new SortingNetwork(criteria - 1);
        private final Tally tally = new Tally(alternatives, criteria, false);
        private final int[][] cut = new int[criteria + 1][Lanes.COUNT];
        private final int[][] fixedPoint = new int[criteria][Lanes.COUNT];
        private final float[][] weight = new float[criteria][Lanes.COUNT];
        private final float[][] total = new float[alternatives][Lanes.COUNT];
        private final float[] z = new float[Lanes.COUNT];

        private Worker(long seed, int samples) {
            this.seed = seed;
            this.samples = samples;
            Arrays.fill(cut[criteria], Integer.MAX_VALUE);
        }

        @Override
        public void work(int block) {
            noise.start(seed, block);
            drawWeights();
            int row = criteria - 1;
            for (int a = 0; a < alternatives; a++) {
                Arrays.fill(total[a], 0);
                for (int c = 0; c < criteria; c++) {
                    noise.normal(row++, z);
                    Lanes.addClamped(weight[c], z, sd[a][c], base[a][c], total[a]);
                }
            }
            tally.add(total, -1, 1, fixedPoint, Lanes.used(block, samples));
        }

        private void drawWeights() {
            for (int c = 1; c < criteria; c++) {
                noise.uniform(c - 1, cut[c]);
            }
            sorting.sort(cut, 1);
            for (int c = 0; c < criteria; c++) {
                Lanes.difference(cut[c + 1], cut[c], fixedPoint[c]);
                Lanes.scaled(fixedPoint[c], 0x1p-31f, weight[c]);
                Lanes.halved(fixedPoint[c]);
            }
        }

        @Override
        public Tally tally() {
            return tally;
        }
    }
}
