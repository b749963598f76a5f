package org.keelweigh.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The efficient alternatives when cost is weighed against value (Goodwin and Wright: cost kept outside the value tree).
 *
 * @param pareto alternatives for which no other costs no more and is worth no less (one of both strictly), by rising
 *     cost
 * @param convex those of them that are best for some fixed price per value point, by rising cost; alternatives on a
 *     straight edge belong to it
 */
public record Frontier(List<Integer> pareto, List<Integer> convex) {

    /** Copies the lists. */
    public Frontier {
        pareto = List.copyOf(pareto);
        convex = List.copyOf(convex);
    }

    /**
     * Finds both frontiers.
     *
     * @param costs in any one unit, less is better
     * @param values of everything but the cost, more is better
     * @param ruledOut left aside
     * @throws IllegalArgumentException if the lengths differ or a number is not finite
     */
    public static Frontier of(double[] costs, double[] values, boolean[] ruledOut) {
        if (costs.length != values.length) {
            throw new IllegalArgumentException("There are " + costs.length + " costs for " + values.length + " values");
        }
        double[][] table = new double[costs.length][];
        for (int a = 0; a < costs.length; a++) {
            table[a] = new double[] {-costs[a], values[a]};
        }
        List<Integer> pareto = Dominance.of(table, ruledOut).undominated().stream()
                .sorted(Comparator.comparing(a -> costs[a]))
                .toList();
        return new Frontier(pareto, convex(pareto, costs, values));
    }

    private static List<Integer> convex(List<Integer> pareto, double[] costs, double[] values) {
        List<Integer> hull = new ArrayList<>();
        for (int next : pareto) {
            if (!hull.isEmpty() && same(hull.getLast(), next, costs, values)) {
                continue;
            }
            while (hull.size() > 1 && below(hull.get(hull.size() - 2), hull.getLast(), next, costs, values)) {
                hull.removeLast();
            }
            hull.add(next);
        }
        // alternatives that coincide with a corner were skipped above so as not to hide a bend
        return pareto.stream()
                .filter(a -> hull.stream().anyMatch(corner -> same(corner, a, costs, values)))
                .toList();
    }

    private static boolean same(int a, int b, double[] costs, double[] values) {
        return costs[a] == costs[b] && values[a] == values[b];
    }

    private static boolean below(int left, int middle, int right, double[] costs, double[] values) {
        return (values[middle] - values[left]) * (costs[right] - costs[left])
                < (values[right] - values[left]) * (costs[middle] - costs[left]);
    }

    /**
     * Returns what one more value point costs between neighbours on the convex frontier, by rising cost: who would pay
     * more than the k-th price per point goes on from alternative k to k+1.
     */
    public List<Double> pricesPerPoint(double[] costs, double[] values) {
        return IntStream.range(1, convex.size())
                .filter(k -> !same(convex.get(k - 1), convex.get(k), costs, values))
                .mapToObj(k -> (costs[convex.get(k)] - costs[convex.get(k - 1)])
                        / (values[convex.get(k)] - values[convex.get(k - 1)]))
                .toList();
    }
}
