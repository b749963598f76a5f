package org.keelweigh.decision.acceptability;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Points of the simplex {@code w >= 0, Σw = 1}: checks and the maps from banked numbers. */
final class Simplex {

    /** Rounding allowed where bounds add up to one. */
    private static final double SLACK = 1e-12;

    private Simplex() {}

    static WeightSample sample(WeightSampler sampler, WeightBank bank, WeightSample.Draw draw) {
        if (sampler.criteria() != bank.criteria()) {
            throw new IllegalArgumentException(
                    "weights are for " + sampler.criteria() + " criteria but the bank is for " + bank.criteria());
        }
        return WeightSample.of(bank.criteria(), bank.samples(), bank.replicates(), draw);
    }

    static List<Double> zeros(int criteria) {
        if (criteria < 1) {
            throw new IllegalArgumentException("criteria must be at least 1 but is " + criteria);
        }
        return Collections.nCopies(criteria, 0.0);
    }

    static List<Double> normalised(List<Double> weights) {
        double sum = sum(weights);
        if (!(sum > 0)) {
            throw new IllegalArgumentException("weights must not all be zero: " + weights);
        }
        return weights.stream().map(w -> w / sum).toList();
    }

    static List<Double> bounds(List<Double> least) {
        double sum = sum(least);
        if (least.isEmpty() || sum > 1 + SLACK) {
            throw new IllegalArgumentException("lower bounds must add up to at most 1 but add up to " + sum);
        }
        return List.copyOf(least);
    }

    static double rest(List<Double> least) {
        return Math.max(0, 1 - sum(least));
    }

    private static double sum(List<Double> weights) {
        double sum = 0;
        for (double w : weights) {
            if (!(w >= 0 && w < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("weights must be non-negative and finite but one is " + w);
            }
            sum += w;
        }
        return sum;
    }

    /**
     * Uniform on the simplex by breaking a stick: {@code w_1 = 1 − (1−u_1)^(1/(n−1))} and likewise with what is left. Of
     * the exact maps it wastes least of a low-discrepancy sequence.
     */
    static void uniform(WeightBank bank, int sample, double[] into) {
        double left = 1;
        int last = into.length - 1;
        for (int c = 0; c < last; c++) {
            double kept = Math.pow(1 - bank.uniform(c, sample), 1.0 / (last - c));
            into[c] = left * (1 - kept);
            left *= kept;
        }
        into[last] = left;
    }

    static void dirichlet(@Nullable GammaQuantile[] quantile, WeightBank bank, int sample, double[] into) {
        double top = Double.NEGATIVE_INFINITY;
        for (int c = 0; c < into.length; c++) {
            GammaQuantile known = quantile[c];
            into[c] = known == null ? Double.NEGATIVE_INFINITY : known.logAt(bank.score(c, sample));
            top = Math.max(top, into[c]);
        }
        double sum = 0;
        for (int c = 0; c < into.length; c++) {
            into[c] = Math.exp(into[c] - top);
            sum += into[c];
        }
        for (int c = 0; c < into.length; c++) {
            into[c] /= sum;
        }
    }

    static void byVertices(List<List<Integer>> order, double[] share, double[] into) {
        double weight = 0;
        for (int place = order.size() - 1; place >= 0; place--) {
            weight += share[place] / (place + 1);
            into[order.get(place).getFirst()] = weight;
        }
    }

    static void bySorting(List<List<Integer>> tiers, double[] drawn, double[] into) {
        double[] sorted = drawn.clone();
        Arrays.sort(sorted);
        int next = sorted.length;
        for (List<Integer> tier : tiers) {
            List<Integer> byDraw = new ArrayList<>(tier);
            byDraw.sort(Comparator.comparingDouble(c -> -drawn[c]));
            for (int criterion : byDraw) {
                into[criterion] = sorted[--next];
            }
        }
    }
}
