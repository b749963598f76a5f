package org.keelweigh.haul;

import java.util.Comparator;
import java.util.List;

/**
 * The revised lifting equation: {@code RWL = LC · HM · VM · DM · AM · FM · CM} and {@code LI = load / RWL}.
 *
 * <p>Source: T. R. Waters, V. Putz-Anderson, A. Garg, <i>Applications Manual for the Revised NIOSH Lifting
 * Equation</i>, DHHS (NIOSH) Publication 94-110, 1994, revised 2021. Computed at full precision; the manual multiplies
 * rounded multipliers and so differs by up to 2.3 %. Not valid for one-handed or seated lifting, for loads that shift
 * (water in a hull), on slippery floors, or for more than 8 hours.
 */
public final class LiftingEquation {

    private LiftingEquation() {}

    /**
     * Evaluates one end of a lift. Where the load has to be set down with care, evaluate both ends and use the lower
     * limit.
     */
    public static LiftResult evaluate(LiftUnits units, LiftTask task) {
        double hm = horizontal(units, task.horizontal());
        double vm = task.vertical() > units.highestV ? 0 : 1 - units.slopeV * Math.abs(task.vertical() - units.kneeV);
        double dm = distance(units, task.travel());
        double am = task.twistDeg() > 135 ? 0 : 1 - 0.0032 * task.twistDeg();
        double fm = task.duration().multiplier(task.perMinute(), task.verticalAtOrigin() >= units.kneeV);
        double cm = task.grip().multiplier(task.vertical() >= units.kneeV);
        double limit = units.constantLoad * hm * vm * dm * am * fm * cm;
        double index = task.load() == 0 ? 0 : task.load() / limit;
        return new LiftResult(hm, vm, dm, am, fm, cm, limit, index);
    }

    private static double horizontal(LiftUnits units, double h) {
        return h > units.farthestH ? 0 : Math.min(1, units.nearestH / h);
    }

    private static double distance(LiftUnits units, double d) {
        if (d > units.mostD) {
            return 0;
        }
        return d < units.leastD ? 1 : 0.82 + units.travelTerm / d;
    }

    /**
     * One of several lifts done in turn.
     *
     * @param load what is lifted, kg or lb
     * @param perMinute lifts in a minute
     * @param limitAtNoFrequency recommended weight limit with a frequency multiplier of 1, kg or lb, above 0
     */
    public record Part(double load, double perMinute, double limitAtNoFrequency) {}

    /**
     * Computes the composite index of several lifts in turn: the hardest lift's index plus what each further one adds,
     * {@code STLI₁ + Σ FILIₖ (1/FM₁…ₖ − 1/FM₁…ₖ₋₁)}, parts ordered by falling index (manual, p. 28).
     *
     * @param high whether the hands begin at or above 75 cm (30 in)
     * @throws IllegalArgumentException if there is no part
     */
    public static double compositeIndex(List<Part> parts, LiftDuration duration, boolean high) {
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("A composite index needs at least 1 lift");
        }
        List<Part> ordered = parts.stream()
                .sorted(Comparator.comparingDouble((Part each) ->
                                each.load / (each.limitAtNoFrequency * duration.multiplier(each.perMinute, high)))
                        .reversed())
                .toList();
        double index = 0;
        double perMinute = 0;
        double inverseBefore = 0;
        for (Part part : ordered) {
            perMinute += part.perMinute;
            double inverse = 1 / duration.multiplier(perMinute, high);
            index += part.load / part.limitAtNoFrequency * (inverse - inverseBefore);
            inverseBefore = inverse;
        }
        return index;
    }
}
