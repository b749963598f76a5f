package org.keelweigh.decision.acceptability;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Ranks alternatives in every pair of a sampled future and sampled weights.
 *
 * <p>The value of alternative a in sample s is {@code Σ_c w_sc v_sac}. Work grows as N·A·C for the values and as
 * N·A·log²A for the ranks.
 */
public final class AcceptabilityAnalysis {

    private final Futures futures;
    private final BitSet ruledOut;
    private final int threads;
    private final int[] slot;
    private final int[] eligible;

    private AcceptabilityAnalysis(Futures futures, BitSet ruledOut, int threads) {
        this.futures = futures;
        this.ruledOut = ruledOut;
        this.threads = threads;
        slot = new int[futures.alternatives()];
        eligible = new int[futures.alternatives() - ruledOut.cardinality()];
        for (int a = 0, next = 0; a < slot.length; a++) {
            slot[a] = ruledOut.get(a) ? -1 : next;
            if (slot[a] >= 0) {
                eligible[next++] = a;
            }
        }
    }

    /** An analysis of all alternatives on one thread. */
    public static AcceptabilityAnalysis of(Futures futures) {
        return new AcceptabilityAnalysis(futures, new BitSet(), 1);
    }

    /** Leaves out the alternatives whose bits are set. */
    public AcceptabilityAnalysis withRuledOut(BitSet alternatives) {
        if (alternatives.length() > futures.alternatives()) {
            throw new IllegalArgumentException("ruled-out alternative " + (alternatives.length() - 1)
                    + " does not exist among " + futures.alternatives());
        }
        return new AcceptabilityAnalysis(futures, (BitSet) alternatives.clone(), threads);
    }

    /** Works on this many threads, 1 to 64. Results do not depend on it. */
    public AcceptabilityAnalysis withThreads(int count) {
        return new AcceptabilityAnalysis(futures, ruledOut, Blocks.requireThreads(count));
    }

    /**
     * Ranks in all samples.
     *
     * @param weights as many samples as there are futures, unless all values are certain
     * @throws IllegalArgumentException when numbers of samples or criteria differ
     */
    public Acceptability analyse(WeightSample weights) {
        requireMatching(weights);
        int samples = weights.samples();
        int parts = weights.replicates();
        Tally[] tallies = new Tally[parts];
        for (int part = 0; part < parts; part++) {
            int blocks = Lanes.blocks(samples) / parts;
            int first = part * blocks;
            tallies[part] = eligible.length == 0
                    ? new Tally(1, futures.criteria(), true)
                    : Blocks.tally(blocks, threads, () -> new Worker(weights, first));
        }
        return new Acceptability(futures.criteria(), samples, slot.clone(), eligible.length, tallies, true);
    }

    private void requireMatching(WeightSample weights) {
        if (weights.criteria() != futures.criteria()) {
            throw new IllegalArgumentException(
                    "weights are for " + weights.criteria() + " criteria, values for " + futures.criteria());
        }
        if (!futures.isCertain() && weights.samples() != futures.samples()) {
            throw new IllegalArgumentException(
                    "weights hold " + weights.samples() + " samples, values " + futures.samples() + " futures");
        }
    }

    private final class Worker implements Blocks.Worker {

        private final WeightSample weights;
        private final int first;
        private final Tally tally = new Tally(eligible.length, futures.criteria(), true);
        private final float[][] total = new float[eligible.length][Lanes.COUNT];
        private final int[][] fixedPoint = new int[futures.criteria()][Lanes.COUNT];

        private Worker(WeightSample weights, int first) {
            this.weights = weights;
            this.first = first;
        }

        @Override
        public void work(int index) {
            int block = first + index;
            float[][] weight = weights.block(block);
            for (int c = 0; c < weight.length; c++) {
                Lanes.scaled(weight[c], Tally.WEIGHT_ONE, fixedPoint[c]);
            }
            for (int i = 0; i < eligible.length; i++) {
                Arrays.fill(total[i], 0);
                futures.addTotals(eligible[i], block, weight, total[i]);
            }
            tally.add(total, futures.low(), futures.high(), fixedPoint, Lanes.used(block, weights.samples()));
        }

        @Override
        public Tally tally() {
            return tally;
        }
    }
}
