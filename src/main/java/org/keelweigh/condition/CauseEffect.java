package org.keelweigh.condition;

import org.keelweigh.boat.Coded;
import org.keelweigh.catalogue.Row;

/**
 * What a hidden cause does to the faults of one check, from the table {@code effects.csv}.
 *
 * @param cause the cause's id
 * @param check the check's id
 * @param relativeRisk how many times as likely a major fault or worse is with the cause as without it, on a boat about five
 *     years old, above 0
 * @param minorPower the power of the same odds factor that acts on minor faults, 0 (none) to 1 (as on major ones)
 * @param role whether the cause brings the fault about or the check merely shows the cause
 * @param source where the figures come from
 */
public record CauseEffect(
        String cause, String check, double relativeRisk, double minorPower, Role role, String source) {

    /** What a check has to do with the cause. */
    public enum Role implements Coded {
        /** The cause brings the fault about. */
        FAULT("fault"),
        /** The check shows the cause. */
        CLUE("clue");

        private final String code;

        Role(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    private static final double GREATEST_RISK = 100;

    /** Far finer than any estimate in the table. */
    private static final double FACTOR_TOLERANCE = 1e-10;

    static CauseEffect of(Row row) {
        return new CauseEffect(
                row.text("cause"),
                row.text("check"),
                row.number("relative_risk", 1, GREATEST_RISK),
                row.number("minor_power", 0, 1),
                Coded.parse(Role.class, row.text("role")),
                row.text("source"));
    }

    /**
     * Turns the relative risk into the factor on the odds that a network with this cause and this check alone needs to show
     * it.
     *
     * <p>With risks {@code p1} and {@code p0} of a major fault or worse with and without the cause,
     * {@code p1 / p0 = relative risk} and {@code π p1 + (1 - π) p0 = p}; the factor {@code f} acts on the odds against fine,
     * {@code f^minor power} on those of minor faults. It grows with the relative risk, so bisection on its logarithm finds it.
     *
     * @param prior the cause's prior chance {@code π}
     * @param usual the check's chances at five years
     * @return the factor, 1 or more
     * @throws IllegalArgumentException if no factor shows this risk, because the chances leave no room for it
     */
    double oddsFactor(double prior, OutcomeChances usual) {
        double without = usual.majorOrWorse() / (1 + prior * (relativeRisk - 1));
        if (!(relativeRisk * without < 1)) {
            throw new IllegalArgumentException("With the relative risk " + relativeRisk + " of " + check + " under "
                    + cause + " its chance would reach 1; it has to be smaller");
        }
        if (usual.majorOrWorse() == 0) {
            return 1;
        }
        double low = 1;
        double high = relativeRisk;
        while (riskRatio(high, prior, usual) < relativeRisk) {
            low = high;
            high *= 2;
        }
        while (high / low - 1 > FACTOR_TOLERANCE) {
            double middle = Math.sqrt(low * high);
            if (riskRatio(middle, prior, usual) < relativeRisk) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.sqrt(low * high);
    }

    private double riskRatio(double factor, double prior, OutcomeChances usual) {
        CheckNode alone = new CheckNode(
                check,
                usual,
                new CauseSet(new int[] {0}, 1),
                new double[] {prior},
                new double[] {Math.pow(factor, minorPower)},
                new double[] {factor});
        return (alone.chance(1, 2) + alone.chance(1, 3)) / (alone.chance(0, 2) + alone.chance(0, 3));
    }
}
