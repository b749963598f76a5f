package org.keelweigh.condition;

/**
 * How good a way of knowing is at one check.
 *
 * <p>A real fault is seen and graded right with chance {@code sensitivity} and taken for fine otherwise. A sound part is
 * called faulty with chance {@code falseAlarm}; false alarms are graded in the proportions in which real faults of that
 * check occur, so that no further parameter is needed. Hence, for a fault of any grade with prior chance {@code p},
 * {@code P(fault | reported fine) = p(1-s) / (p(1-s) + (1-p)(1-fa))}.
 *
 * @param sensitivity chance that a fault which is there is seen, in [0, 1]
 * @param falseAlarm chance that a fault is seen where there is none, in [0, 1)
 */
public record Reliability(double sensitivity, double falseAlarm) {

    /** Whatever is reported is so. */
    public static final Reliability CERTAIN = new Reliability(1, 0);

    public Reliability {
        if (!(sensitivity >= 0 && sensitivity <= 1)) {
            throw new IllegalArgumentException("The sensitivity is " + sensitivity + ", outside 0 to 1");
        }
        if (!(falseAlarm >= 0 && falseAlarm < 1)) {
            throw new IllegalArgumentException("The chance of a false alarm is " + falseAlarm + ", outside 0 to 1");
        }
        // A way of knowing that sees less than it imagines would make "looked faulty" speak for a sound part.
        sensitivity = Math.max(sensitivity, falseAlarm);
    }

    /**
     * Computes the chance of a report given what is truly there.
     *
     * @param report what is reported
     * @param truth what is there
     * @param usual the check's usual chances, which grade the false alarms
     * @return in [0, 1]; over all four reports the chances sum to 1
     * @throws IllegalArgumentException if either outcome is {@link Outcome#NOT_FITTED}
     */
    public double chanceOf(Outcome report, Outcome truth, OutcomeChances usual) {
        if (report == Outcome.NOT_FITTED || truth == Outcome.NOT_FITTED) {
            throw new IllegalArgumentException("A part that is not fitted has no report to weigh");
        }
        if (truth == Outcome.FINE) {
            double alarm = usual.fault() > 0 ? falseAlarm : 0;
            return report == Outcome.FINE ? 1 - alarm : alarm == 0 ? 0 : alarm * usual.of(report) / usual.fault();
        }
        return report == Outcome.FINE ? 1 - sensitivity : report == truth ? sensitivity : 0;
    }
}
