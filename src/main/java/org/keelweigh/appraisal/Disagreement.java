package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How differently those who decide weigh one criterion, and how much that can matter here.
 *
 * @param criterion the criterion's place
 * @param shares each decider's share, 0 to 1, in their order
 * @param spread how far the boats lie apart on it, in points of its scale of 100, to the decider who sees them farthest apart
 */
public record Disagreement(int criterion, List<Double> shares, double spread) {

    public Disagreement {
        shares = List.copyOf(shares);
    }

    /** Lists all criteria of the deciders' perspectives, the difference that matters most first. */
    public static List<Disagreement> of(List<Perspective> deciders) {
        List<Disagreement> all = new ArrayList<>();
        int criteria = deciders.getFirst().weights().criteria().size();
        for (int c = 0; c < criteria; c++) {
            int column = c;
            all.add(new Disagreement(
                    c,
                    deciders.stream().map(each -> each.share(column)).toList(),
                    deciders.stream()
                            .mapToDouble(each -> each.spread(column))
                            .max()
                            .orElse(0)));
        }
        all.sort(Comparator.comparingDouble(Disagreement::points).reversed());
        return List.copyOf(all);
    }

    /** Tells how far apart the greatest and the smallest share are. */
    public double gap() {
        double most = shares.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        double least = shares.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        return most - least;
    }

    /** Tells by how many points of the total the difference can move one boat against another: gap times spread. */
    public double points() {
        return gap() * spread;
    }
}
