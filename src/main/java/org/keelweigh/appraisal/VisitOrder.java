package org.keelweigh.appraisal;

/** In which order to make the checks of a visit. */
public enum VisitOrder {
    WALK("the walk round the boat, with the checks that fit into your time"),
    WORTH("what is worth most per minute first");

    private final String label;

    VisitOrder(String label) {
        this.label = label;
    }

    /** Tells the order in plain words. */
    public String label() {
        return label;
    }
}
