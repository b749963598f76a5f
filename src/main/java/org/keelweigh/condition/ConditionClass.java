package org.keelweigh.condition;

import org.keelweigh.boat.Coded;

/** The condition of a boat in one word, for its price. The rule stands in {@code docs/method/condition.md}. */
public enum ConditionClass implements Coded {
    /** Looked at closely, next to nothing found. */
    EXCELLENT("excellent", "excellent"),
    /** Honest wear; what the usual price assumes. */
    GOOD("good", "good"),
    /** A serious fault or two. */
    FAIR("fair", "fair"),
    /** Several serious faults. */
    POOR("poor", "poor"),
    /** Not to be bought as a boat. */
    PARTS("parts", "good for parts only");

    // Half-way between the price factors 1.00, 0.82, 0.58 and 0.30 of good, fair, poor and parts.
    private static final double FAIR_FROM = 0.09;
    private static final double POOR_FROM = 0.30;
    private static final double PARTS_FROM = 0.56;

    private static final double EXCELLENT_EVIDENCE = 0.7;

    private final String code;
    private final String label;

    ConditionClass(String code, String label) {
        this.code = code;
        this.label = label;
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells the class in plain words. */
    public String label() {
        return label;
    }

    /**
     * Sorts a boat into a class by the share of its price that its serious faults are expected to take after the repairs that count.
     *
     * @param seriousLoss combined resale effect of major and stop faults of the boat itself, each as often as it is left, 0 to 1
     * @param stopped whether a fault of the boat itself stops the purchase and nobody has quoted for mending it
     * @param seriousFaults how many major and stop faults were found
     * @param minorFaults how many minor faults were found
     * @param evidenceShare how much of what matters was looked at, 0 to 1
     */
    static ConditionClass of(
            double seriousLoss, boolean stopped, int seriousFaults, int minorFaults, double evidenceShare) {
        if (stopped || seriousLoss >= PARTS_FROM) {
            return PARTS;
        }
        if (seriousLoss >= POOR_FROM) {
            return POOR;
        }
        if (seriousLoss >= FAIR_FROM) {
            return FAIR;
        }
        boolean spotless = seriousFaults == 0 && minorFaults <= 1 && evidenceShare >= EXCELLENT_EVIDENCE;
        return spotless ? EXCELLENT : GOOD;
    }
}
