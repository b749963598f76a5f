package org.keelweigh.haul;

/**
 * One end of a two-handed lift, in the units of {@link LiftUnits}: kg and cm, or lb and in.
 *
 * @param load what is lifted, 0 or more
 * @param horizontal hands ahead of the ankles, {@code H}, above 0
 * @param vertical hands above the floor at the end evaluated, {@code V}, 0 or more
 * @param verticalAtOrigin hands above the floor where the lift begins; the frequency multiplier depends on it
 * @param travel up-and-down travel of the hands, {@code D}, 0 or more
 * @param twistDeg turn of the trunk, {@code A}, degrees, 0 or more
 * @param perMinute lifts in a minute, {@code F}, 0 or more
 * @param duration for how long lifting goes on
 * @param grip how well the hands hold it
 */
public record LiftTask(
        double load,
        double horizontal,
        double vertical,
        double verticalAtOrigin,
        double travel,
        double twistDeg,
        double perMinute,
        LiftDuration duration,
        LiftGrip grip) {

    public LiftTask {
        if (!(horizontal > 0) || Double.isInfinite(horizontal)) {
            throw new IllegalArgumentException("The hands must be more than 0 (cm or in) ahead, not " + horizontal);
        }
        requireNotNegative("load (kg or lb)", load);
        requireNotNegative("height of the hands (cm or in)", vertical);
        requireNotNegative("height of the hands at the start (cm or in)", verticalAtOrigin);
        requireNotNegative("travel of the hands (cm or in)", travel);
        requireNotNegative("turn of the trunk (degrees)", twistDeg);
        requireNotNegative("number of lifts a minute", perMinute);
    }

    private static void requireNotNegative(String what, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("The " + what + " must be 0 or more, not " + value);
        }
    }
}
