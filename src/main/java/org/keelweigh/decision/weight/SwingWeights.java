package org.keelweigh.decision.weight;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.keelweigh.decision.Weights;

/**
 * Swing weights (Edwards and Barron 1994): imagine an alternative at the worst end of every range. The step to the best
 * end that would please most gets 100 points, the others get points in proportion. Shares are points over their sum.
 *
 * @param points by criterion id, 0 to 100, at least one above 0
 */
public record SwingWeights(Map<String, Double> points) {

    private static final double MOST = 100;

    /** Copies the points in their order and refuses any outside 0 to 100. */
    public SwingWeights {
        points = Collections.unmodifiableMap(new LinkedHashMap<>(points));
        points.forEach((id, value) -> {
            if (!(value >= 0 && value <= MOST)) {
                throw new IllegalArgumentException(
                        "The swing of '" + id + "' must be 0 to 100 points, but is " + value);
            }
        });
        Weights.of(points);
    }

    /** Returns the shares. */
    public Weights weights() {
        return Weights.of(points);
    }
}
