package org.keelweigh.haul;

/** How hard a lift is, from easy to not to be tried. */
public enum LiftBand {
    /** Within both yardsticks. */
    COMFORTABLE("comfortable"),
    /** Up to one and a half times the person's limit, and a lifting index up to 3. */
    HARD("hard"),
    /** Beyond that. */
    NO("do not try");

    private final String label;

    LiftBand(String label) {
        this.label = label;
    }

    /** Tells it in plain words. */
    public String label() {
        return label;
    }
}
