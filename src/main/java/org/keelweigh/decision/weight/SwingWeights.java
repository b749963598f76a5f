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

    /**
     * Carries weights over to a changed range, so that a natural unit of the measure keeps its worth: the weight of the
     * criterion grows with the stretch, then all shares are normalised again.
     *
     * @param stretch the step from the worst to the best end of the new range, as a multiple of the old step, both
     *     measured on one value scale that covers both; above 0
     * @throws IllegalArgumentException for an unknown criterion or a stretch that is not positive
     */
    public static Weights afterRangeChange(Weights weights, String criterion, double stretch) {
        if (!(stretch > 0 && stretch < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("The stretch of a range must be above 0 and finite, but is " + stretch);
        }
        Map<String, Double> raw = weights.asMap();
        raw.put(criterion, weights.share(criterion) * stretch);
        return Weights.of(raw);
    }
}
