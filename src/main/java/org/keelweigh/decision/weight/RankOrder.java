package org.keelweigh.decision.weight;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.keelweigh.decision.Weights;

/** Weights from nothing but an order of importance (Barron and Barrett 1996). */
public enum RankOrder {
    /** Rank-order centroid: {@code w_i = (1/n) Σ_{j=i..n} 1/j}, the mean of all weights that keep the order. */
    CENTROID {
        @Override
        double raw(int i, int n) {
            double sum = 0;
            for (int j = n; j >= i; j--) {
                sum += 1.0 / j;
            }
            return sum;
        }
    },
    /** Rank sum: {@code w_i = 2 (n + 1 − i) / (n (n + 1))}; flatter (Stillwell, Seaver and Edwards 1981). */
    SUM {
        @Override
        double raw(int i, int n) {
            return n + 1.0 - i;
        }
    },
    /** Reciprocal: {@code w_i = (1/i) / Σ_j 1/j}. */
    RECIPROCAL {
        @Override
        double raw(int i, int n) {
            return 1.0 / i;
        }
    };

    /** Returns an unnormalised weight of rank i among n, from 1. */
    abstract double raw(int i, int n);

    /**
     * Returns the shares of the ranks 1 to n.
     *
     * @throws IllegalArgumentException if n is below 1
     */
    public double[] shares(int n) {
        if (n < 1) {
            throw new IllegalArgumentException("An order needs at least 1 criterion, but has " + n);
        }
        double[] shares = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            shares[i] = raw(i + 1, n);
            sum += shares[i];
        }
        for (int i = 0; i < n; i++) {
            shares[i] /= sum;
        }
        return shares;
    }

    /** Returns the weights of criteria that were put in order, most important first. */
    public Weights weights(List<String> mostImportantFirst) {
        return weightsOfGroups(mostImportantFirst.stream().map(List::of).toList());
    }

    /**
     * Returns the weights of groups of equally important criteria, most important group first. Each criterion of a group
     * gets the mean of the shares of the ranks that the group takes up.
     *
     * @throws IllegalArgumentException if there is no criterion or one is named twice
     */
    public Weights weightsOfGroups(List<List<String>> mostImportantFirst) {
        double[] shares =
                shares(mostImportantFirst.stream().mapToInt(List::size).sum());
        Map<String, Double> raw = new LinkedHashMap<>();
        int rank = 0;
        for (List<String> group : mostImportantFirst) {
            double sum = 0;
            for (int i = 0; i < group.size(); i++) {
                sum += shares[rank++];
            }
            for (String id : group) {
                if (raw.put(id, sum / group.size()) != null) {
                    throw new IllegalArgumentException("'" + id + "' stands twice in the order");
                }
            }
        }
        return Weights.of(raw);
    }
}
