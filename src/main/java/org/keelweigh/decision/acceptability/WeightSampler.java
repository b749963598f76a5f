package org.keelweigh.decision.acceptability;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What is known of a person's weights, and how to draw weights that agree with it.
 *
 * <p>Every kind is a continuous map of banked numbers: the same bank gives smoothly moving weights when the stated ones
 * move. None rejects draws.
 */
public sealed interface WeightSampler {

    /** Number of weights. */
    int criteria();

    /**
     * Draws one set of weights for each sample of the bank.
     *
     * @throws IllegalArgumentException when the bank is for another number of criteria
     */
    WeightSample sample(WeightBank bank);

    /**
     * Exactly these weights.
     *
     * @param weights non-negative, not all zero; scaled to add up to one
     */
    record Fixed(List<Double> weights) implements WeightSampler {

        public Fixed {
            weights = Simplex.normalised(weights);
        }

        @Override
        public int criteria() {
            return weights.size();
        }

        @Override
        public WeightSample sample(WeightBank bank) {
            return Simplex.sample(this, bank, (s, into) -> Arrays.setAll(into, weights::get));
        }
    }

    /**
     * Nothing is known but lower bounds: uniform on {@code w_c >= least_c, Σw = 1}, drawn as
     * {@code least + (1 − Σleast)·u} with {@code u} uniform on the simplex.
     *
     * @param least lower bounds, non-negative, adding up to at most 1
     */
    record Uniform(List<Double> least) implements WeightSampler {

        public Uniform {
            least = Simplex.bounds(least);
        }

        /** Nothing known at all. */
        public Uniform(int criteria) {
            this(Simplex.zeros(criteria));
        }

        @Override
        public int criteria() {
            return least.size();
        }

        @Override
        public WeightSample sample(WeightBank bank) {
            double rest = Simplex.rest(least);
            return Simplex.sample(this, bank, (s, into) -> {
                Simplex.uniform(bank, s, into);
                Arrays.setAll(into, c -> least.get(c) + rest * into[c]);
            });
        }
    }

    /**
     * Weights scattered around stated ones: Dirichlet with parameters {@code concentration · w_c}, mean {@code w_c} and
     * standard deviation {@code √(w_c(1−w_c)/(concentration+1))}. Drawn as gamma quantiles of the banked numbers. A
     * weight of zero stays zero.
     *
     * @param weights non-negative, not all zero; scaled to add up to one
     * @param concentration 0.5 to 1e6; see {@link Sureness}
     */
    record AroundStated(List<Double> weights, double concentration) implements WeightSampler {

        public AroundStated {
            weights = Simplex.normalised(weights);
            if (!(concentration >= 0.5 && concentration <= 1e6)) {
                throw new IllegalArgumentException("concentration must be 0.5 to 1e6 but is " + concentration);
            }
        }

        public AroundStated(List<Double> weights, Sureness sureness) {
            this(weights, sureness.concentration());
        }

        @Override
        public int criteria() {
            return weights.size();
        }

        @Override
        public WeightSample sample(WeightBank bank) {
            GammaQuantile[] quantile = new GammaQuantile[criteria()];
            for (int c = 0; c < quantile.length; c++) {
                double shape = concentration * weights.get(c);
                quantile[c] = shape > SMALLEST_SHAPE ? new GammaQuantile(shape) : null;
            }
            return Simplex.sample(this, bank, (s, into) -> Simplex.dirichlet(quantile, bank, s, into));
        }

        /** Below this a weight is zero in all but one draw of a million. */
        private static final double SMALLEST_SHAPE = 1e-6;
    }

    /**
     * Only an order is known, perhaps in part: each tier's weights are at least those of the next tier; within a tier
     * nothing is known. Uniform on the weights that keep the order and the lower bound.
     *
     * <p>A full order is drawn as uniform shares of the vertices (1,0,0…), (½,½,0…), (⅓,⅓,⅓…): no rejection and no random
     * walk. With larger tiers, uniform weights are sorted and each tier's share of them is dealt in the order of the
     * draw; ranks and order statistics of exchangeable numbers are independent, so this is uniform too.
     *
     * @param tiers from the most to the least important; each criterion 0 .. n−1 exactly once, no empty tier
     * @param least one lower bound for all weights, 0 to 1/n
     */
    record OrderOnly(List<List<Integer>> tiers, double least) implements WeightSampler {

        public OrderOnly {
            tiers = tiers.stream().map(List::copyOf).toList();
            Set<Integer> seen = new HashSet<>();
            int count = 0;
            for (List<Integer> tier : tiers) {
                seen.addAll(tier);
                count += tier.size();
                if (tier.isEmpty()) {
                    throw new IllegalArgumentException("tiers must not be empty: " + tiers);
                }
            }
            for (int c = 0; c < count; c++) {
                seen.remove(c);
            }
            if (count == 0 || !seen.isEmpty()) {
                throw new IllegalArgumentException(
                        "tiers must name each criterion from 0 to " + (count - 1) + " once: " + tiers);
            }
            if (!(least >= 0 && least * count <= 1)) {
                throw new IllegalArgumentException("least must be 0 to 1/" + count + " but is " + least);
            }
        }

        /** A full order, most important criterion first. */
        public static OrderOnly of(List<Integer> order) {
            return new OrderOnly(order.stream().map(List::of).toList(), 0);
        }

        @Override
        public int criteria() {
            return tiers.stream().mapToInt(List::size).sum();
        }

        @Override
        public WeightSample sample(WeightBank bank) {
            double rest = 1 - least * criteria();
            boolean full = tiers.size() == criteria();
            double[] drawn = new double[criteria()];
            return Simplex.sample(this, bank, (s, into) -> {
                Simplex.uniform(bank, s, drawn);
                if (full) {
                    Simplex.byVertices(tiers, drawn, into);
                } else {
                    Simplex.bySorting(tiers, drawn, into);
                }
                Arrays.setAll(into, c -> least + rest * into[c]);
            });
        }
    }
}
