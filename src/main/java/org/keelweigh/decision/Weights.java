package org.keelweigh.decision;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Shares of importance by criterion id: non-negative and summing to one.
 *
 * <p>A weight belongs to the step from the worst to the best end of its criterion's value function. It says nothing
 * without that range.
 */
public final class Weights {

    private final List<String> criteria;
    private final double[] shares;

    private Weights(List<String> criteria, double[] shares) {
        this.criteria = criteria;
        this.shares = shares;
    }

    /**
     * Normalises raw points to shares, keeping the map's order.
     *
     * @param raw non-negative points by criterion id, not all zero
     * @throws IllegalArgumentException naming the criterion whose points are negative or not finite, or if none is
     *     positive
     */
    public static Weights of(Map<String, Double> raw) {
        double[] points = new double[raw.size()];
        int i = 0;
        for (Map.Entry<String, Double> entry : raw.entrySet()) {
            double value = entry.getValue();
            if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "The weight of '" + entry.getKey() + "' must be 0 or more and finite, but is " + value);
            }
            points[i++] = value;
        }
        return new Weights(List.copyOf(raw.keySet()), normalised(points));
    }

    /** Gives every criterion the same share. */
    public static Weights equal(List<String> criteria) {
        Map<String, Double> raw = new LinkedHashMap<>();
        criteria.forEach(id -> raw.put(id, 1.0));
        return of(raw);
    }

    private static double[] normalised(double[] points) {
        double largest = 0;
        for (double point : points) {
            largest = Math.max(largest, point);
        }
        if (largest == 0) {
            throw new IllegalArgumentException("At least 1 criterion needs a weight above 0");
        }
        // dividing by the largest first keeps the sum finite and away from underflow
        double sum = 0;
        for (int i = 0; i < points.length; i++) {
            points[i] /= largest;
            sum += points[i];
        }
        for (int i = 0; i < points.length; i++) {
            points[i] /= sum;
        }
        return points;
    }

    /** Returns the criterion ids in their order. */
    public List<String> criteria() {
        return criteria;
    }

    /**
     * Returns the share of a criterion, 0 to 1.
     *
     * @throws IllegalArgumentException if these weights know no such criterion
     */
    public double share(String criterion) {
        return shares[indexOf(criterion)];
    }

    private int indexOf(String criterion) {
        int index = criteria.indexOf(criterion);
        if (index < 0) {
            throw new IllegalArgumentException("There is no weight for '" + criterion + "' among " + criteria);
        }
        return index;
    }

    /**
     * Sets one share and rescales the others proportionally: {@code w_j' = w_j (1 − t) / (1 − w_k)}. If the others have
     * no weight at all, what is left is divided among them equally.
     *
     * @param share t, 0 to 1
     * @throws IllegalArgumentException for an unknown criterion, a share outside 0 to 1, or a share other than 1 for an
     *     only criterion
     */
    public Weights with(String criterion, double share) {
        int k = indexOf(criterion);
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("The share of '" + criterion + "' must be 0 to 1, but is " + share);
        }
        if (shares.length == 1 && share != 1) {
            throw new IllegalArgumentException("The only criterion has share 1, not " + share);
        }
        double[] changed = shareOfRest(shares, k);
        for (int j = 0; j < changed.length; j++) {
            changed[j] *= 1 - share;
        }
        changed[k] = share;
        return new Weights(criteria, changed);
    }

    /**
     * Returns the shares of all criteria but one when that one has no weight: they sum to one (all zero for an only
     * criterion).
     *
     * @param weights summing to one
     * @param k the criterion that is left out
     */
    public static double[] shareOfRest(double[] weights, int k) {
        double rest = 0;
        for (int j = 0; j < weights.length; j++) {
            rest += j == k ? 0 : weights[j];
        }
        double[] shares = new double[weights.length];
        for (int j = 0; j < weights.length; j++) {
            if (j != k) {
                shares[j] = rest > 0 ? weights[j] / rest : 1.0 / (weights.length - 1);
            }
        }
        return shares;
    }

    /**
     * Returns what each criterion really contributes to telling the alternatives apart: weight times the spread of its
     * values, normalised to sum to one; all zero if no criterion of positive weight differs.
     *
     * @param values {@code [alternative][criterion]}, columns in the order of {@link #criteria()}
     */
    public double[] effectiveShares(double[][] values) {
        Tables.requireWeights(shares, Tables.requireTable(values));
        double[] effective = Tables.spreads(values, new boolean[values.length]);
        double sum = 0;
        for (int c = 0; c < effective.length; c++) {
            effective[c] *= shares[c];
            sum += effective[c];
        }
        for (int c = 0; c < effective.length && sum > 0; c++) {
            effective[c] /= sum;
        }
        return effective;
    }

    /** Returns the shares in the order of {@link #criteria()}, as a fresh array. */
    public double[] toArray() {
        return shares.clone();
    }

    /**
     * Returns the shares in the column order of a set.
     *
     * @throws IllegalArgumentException unless these weights are for exactly the criteria of the set
     */
    public double[] toArray(CriteriaSet set) {
        if (!Set.copyOf(criteria).equals(Set.copyOf(set.ids()))) {
            throw new IllegalArgumentException("These weights are for " + criteria + ", not for " + set.ids());
        }
        return set.ids().stream().mapToDouble(this::share).toArray();
    }

    /** Returns the shares by criterion id, in order. */
    public Map<String, Double> asMap() {
        Map<String, Double> map = new LinkedHashMap<>();
        for (int i = 0; i < shares.length; i++) {
            map.put(criteria.get(i), shares[i]);
        }
        return map;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Weights that && asMap().equals(that.asMap());
    }

    @Override
    public int hashCode() {
        return asMap().hashCode();
    }

    @Override
    public String toString() {
        return "Weights" + asMap();
    }
}
