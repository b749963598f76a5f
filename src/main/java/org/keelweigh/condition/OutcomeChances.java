package org.keelweigh.condition;

/**
 * How likely each outcome of a check is. The four chances sum to one.
 *
 * @param fine chance of {@link Outcome#FINE}, in (0, 1]
 * @param minor chance of {@link Outcome#MINOR}, in [0, 1)
 * @param major chance of {@link Outcome#MAJOR}, in [0, 1)
 * @param stop chance of {@link Outcome#STOP}, in [0, 1)
 */
public record OutcomeChances(double fine, double minor, double major, double stop) {

    /** How many outcomes a check can have, besides not being fitted. */
    static final int COUNT = 4;

    /** Room for sums of rounded table entries; catalogue chances carry three decimals. */
    private static final double SUM_TOLERANCE = 1e-6;

    public OutcomeChances {
        requireChance("fine", fine);
        requireChance("minor", minor);
        requireChance("major", major);
        requireChance("stop", stop);
        double sum = fine + minor + major + stop;
        if (!(Math.abs(sum - 1) <= SUM_TOLERANCE)) {
            throw new IllegalArgumentException("The chances of a check's outcomes sum to " + sum + ", not to 1");
        }
    }

    /**
     * Makes chances from those of the faults; fine is what is left.
     *
     * @throws IllegalArgumentException if a chance is outside [0, 1] or they sum to more than 1
     */
    public static OutcomeChances ofFaults(double minor, double major, double stop) {
        return new OutcomeChances(1 - minor - major - stop, minor, major, stop);
    }

    static OutcomeChances of(double[] byOutcome) {
        return new OutcomeChances(byOutcome[0], byOutcome[1], byOutcome[2], byOutcome[3]);
    }

    /**
     * Tells the chance of one outcome.
     *
     * @return in [0, 1]; 0 for {@link Outcome#NOT_FITTED}, which these chances take as settled
     */
    public double of(Outcome outcome) {
        return switch (outcome) {
            case FINE -> fine;
            case MINOR -> minor;
            case MAJOR -> major;
            case STOP -> stop;
            case NOT_FITTED -> 0;
        };
    }

    /** Tells the chance of a major fault or one that stops the purchase, in [0, 1]. */
    public double majorOrWorse() {
        return major + stop;
    }

    /** Tells the chance of any fault, in [0, 1]. */
    public double fault() {
        return minor + major + stop;
    }

    /**
     * Multiplies the odds of every fault against fine by one factor, as for age or use:
     * {@code p_o' = f p_o / (p_fine + f (1 - p_fine))}.
     *
     * @param factor not negative, finite
     * @throws IllegalArgumentException if the factor is negative or not finite
     */
    public OutcomeChances withFaultOddsTimes(double factor) {
        if (!(factor >= 0 && Double.isFinite(factor))) {
            throw new IllegalArgumentException("The factor on the odds is " + factor + "; it must be 0 or more");
        }
        double total = fine + factor * fault();
        return new OutcomeChances(fine / total, factor * minor / total, factor * major / total, factor * stop / total);
    }

    double[] toArray() {
        return new double[] {fine, minor, major, stop};
    }

    private static void requireChance(String name, double chance) {
        if (!(chance >= -SUM_TOLERANCE && chance <= 1 + SUM_TOLERANCE)) {
            throw new IllegalArgumentException("The chance of " + name + " is " + chance + ", outside 0 to 1");
        }
    }
}
