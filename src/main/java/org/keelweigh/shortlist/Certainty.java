package org.keelweigh.shortlist;

import org.keelweigh.boat.Coded;

/** How sure a person is of the weights they stated. */
public enum Certainty implements Coded {
    VERY_SURE("very-sure", "very sure", 160),
    FAIRLY_SURE("fairly-sure", "fairly sure", 40),
    ROUGHLY("roughly", "roughly so", 12),
    ORDER_ONLY("order-only", "only the order", 0);

    private final String code;
    private final String label;
    private final double concentration;

    Certainty(String code, String label, double concentration) {
        this.code = code;
        this.label = label;
        this.concentration = concentration;
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells it in plain words. */
    public String label() {
        return label;
    }

    /** Tells the concentration of the Dirichlet distribution around the stated weights; 0 for the order alone. */
    public double concentration() {
        return concentration;
    }
}
