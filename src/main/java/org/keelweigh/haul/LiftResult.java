package org.keelweigh.haul;

/**
 * What the revised lifting equation says of one lift.
 *
 * @param horizontal multiplier HM, 0 to 1
 * @param vertical multiplier VM, 0 to 1
 * @param distance multiplier DM, 0 to 1
 * @param asymmetry multiplier AM, 0 to 1
 * @param frequency multiplier FM, 0 to 1
 * @param grip multiplier CM, 0.9 to 1
 * @param limit recommended weight limit, kg or lb; 0 where the equation recommends no lift at all
 * @param index load divided by the limit; infinite where the limit is 0 and there is a load
 */
public record LiftResult(
        double horizontal,
        double vertical,
        double distance,
        double asymmetry,
        double frequency,
        double grip,
        double limit,
        double index) {

    /** Up to this index a lift suits nearly all healthy workers (manual, p. 20). */
    public static final double DESIGN_GOAL = 1;
    /** Above this index nearly all workers are at more risk (manual, p. 20). */
    public static final double TOO_MUCH = 3;
}
