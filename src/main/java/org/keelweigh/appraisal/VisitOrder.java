package org.keelweigh.appraisal;

/** In which order to make the checks of a visit. */
public enum VisitOrder {
    WALK("a walk round the boat"),
    WORTH("most worth per minute first"),
    CHOICE("what could change the choice first");

    private final String label;

    VisitOrder(String label) {
        this.label = label;
    }

    /** Tells the order in plain words. */
    public String label() {
        return label;
    }
}
