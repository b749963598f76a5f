package org.keelweigh.condition;

/** Something that was observed about a boat and that speaks for or against hidden causes. */
public sealed interface Evidence {

    /** Tells the id of the check or signal that was observed. */
    String about();

    /**
     * Is the outcome of a check as reported by somebody.
     *
     * @param about the check's id
     * @param outcome what was reported; not {@link Outcome#NOT_FITTED}
     * @param reliability how good the way of knowing is
     */
    record CheckReport(String about, Outcome outcome, Reliability reliability) implements Evidence {

        public CheckReport {
            if (outcome == Outcome.NOT_FITTED) {
                throw new IllegalArgumentException("The check " + about + " is not fitted, which is no evidence");
            }
        }
    }

    /**
     * Is a sign which shows that a check would come out at some outcome or worse, or that it would not, though nobody graded
     * the check itself.
     *
     * @param about the check's id
     * @param sign the id of the sign that was looked for
     * @param least the outcome from which the sign shows; not {@link Outcome#FINE} nor {@link Outcome#NOT_FITTED}
     * @param seen whether the sign was there
     * @param reliability how good the look was
     */
    record CheckSign(String about, String sign, Outcome least, boolean seen, Reliability reliability)
            implements Evidence {

        public CheckSign {
            if (least == Outcome.NOT_FITTED || least == Outcome.FINE) {
                throw new IllegalArgumentException("A sign cannot show that " + about + " is " + least.label());
            }
        }
    }

    /**
     * Is a signal of one cause, looked for.
     *
     * @param about the signal's id
     * @param ifThere chance of what was reported if the signal is there; 1 when it was plainly seen, 0 when plainly absent
     * @param ifAbsent chance of what was reported if the signal is absent
     */
    record SignalLook(String about, double ifThere, double ifAbsent) implements Evidence {

        public SignalLook {
            if (!(ifThere >= 0 && ifThere <= 1 && ifAbsent >= 0 && ifAbsent <= 1 && ifThere + ifAbsent > 0)) {
                throw new IllegalArgumentException("The signal " + about + " has chances " + ifThere + " and "
                        + ifAbsent + ", which must lie in 0 to 1 and not both be 0");
            }
        }

        /** Makes evidence of a signal that was plainly there or plainly absent. */
        public static SignalLook of(String signal, boolean seen) {
            return new SignalLook(signal, seen ? 1 : 0, seen ? 0 : 1);
        }
    }
}
