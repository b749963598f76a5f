package org.keelweigh.appraisal;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.keelweigh.decision.ValueFunction;

/** What a point of everything but cost is worth in money, by the weights: the slope of the line of equal value. */
public final class TradeOff {

    private static final double NEARBY = 50;

    private TradeOff() {}

    /**
     * Tells how much more the leader could cost over the horizon for one more point of everything else, and be worth the same:
     * {@code (1 − w) / (w·|v′|)} with the slope of the cost's value function around the leader's cost, or over its whole range
     * where that is level.
     *
     * @return money per point, above 0; empty without a leader, or if cost has no weight or all of it
     */
    public static OptionalDouble moneyPerPoint(Measured measured, Perspective perspective) {
        int column = measured.yardsticks().column(Measure.COST);
        OptionalInt leader = perspective.ranking().leader();
        if (column < 0 || leader.isEmpty()) {
            return OptionalDouble.empty();
        }
        double share = perspective.share(column);
        if (share <= 0 || share >= 1) {
            return OptionalDouble.empty();
        }
        ValueFunction value =
                measured.yardsticks().all().get(column).criterion().valueFunction();
        double cost =
                measured.boats().get(leader.getAsInt()).measures().getFirst().get(column);
        return OptionalDouble.of((1 - share) / (share * slope(value, cost)));
    }

    private static double slope(ValueFunction value, double cost) {
        double near = (value.value(cost - NEARBY) - value.value(cost + NEARBY)) / (2 * NEARBY);
        if (near > 0) {
            return near;
        }
        List<ValueFunction.Point> points = value.points();
        ValueFunction.Point first = points.getFirst();
        ValueFunction.Point last = points.getLast();
        return (first.value() - last.value()) / (last.measure() - first.measure());
    }
}
