package org.keelweigh.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Why one alternative beats another: {@code V_a − V_b = Σ_c w_c (v_ac − v_bc)}, criterion by criterion.
 *
 * @param parts one per criterion, in column order
 */
public record Difference(List<Part> parts) {

    /**
     * What one criterion adds to the difference.
     *
     * @param criterion column
     * @param points {@code w_c (v_ac − v_bc)}; positive speaks for a, negative for b
     */
    public record Part(int criterion, double points) {}

    /** Copies the parts. */
    public Difference {
        parts = List.copyOf(parts);
    }

    /**
     * Compares alternative {@code a} with {@code b}.
     *
     * @throws IllegalArgumentException if table and weights do not fit or an index is out of bounds
     */
    public static Difference between(double[][] values, double[] weights, int a, int b) {
        Tables.requireWeights(weights, Tables.requireTable(values));
        Tables.requireIndex(a, values.length);
        Tables.requireIndex(b, values.length);
        List<Part> parts = new ArrayList<>(weights.length);
        for (int c = 0; c < weights.length; c++) {
            parts.add(new Part(c, weights[c] * (values[a][c] - values[b][c])));
        }
        return new Difference(parts);
    }

    /** Returns {@code V_a − V_b} in value points. */
    public double margin() {
        double margin = 0;
        for (Part part : parts) {
            margin += part.points();
        }
        return margin;
    }

    /** Returns what speaks for a, strongest first. */
    public List<Part> pros() {
        return parts.stream()
                .filter(part -> part.points() > 0)
                .sorted(Comparator.comparing(Part::points).reversed())
                .toList();
    }

    /** Returns what speaks for b, strongest (most negative) first. */
    public List<Part> cons() {
        return parts.stream()
                .filter(part -> part.points() < 0)
                .sorted(Comparator.comparing(Part::points))
                .toList();
    }

    /**
     * Returns the fewest of the strongest pros that outweigh all cons together: enough for a sentence. All pros if they
     * never do.
     */
    public List<Part> decisivePros() {
        double against = -cons().stream().mapToDouble(Part::points).sum();
        List<Part> pros = pros();
        double sum = 0;
        int used = 0;
        while (used < pros.size() && (used == 0 || sum <= against)) {
            sum += pros.get(used++).points();
        }
        return pros.subList(0, used);
    }
}
