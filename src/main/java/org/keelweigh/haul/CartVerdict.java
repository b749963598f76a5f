package org.keelweigh.haul;

/** How many people a launch takes, from least to most effort. */
public enum CartVerdict {
    /** One person brings it to the water and back. */
    ONE_PERSON("one person"),
    /** It takes two. */
    TWO_PEOPLE("two people"),
    /** It cannot be done with this cart, by two people either. */
    NOT_BY_CART("not with this cart");

    private final String label;

    CartVerdict(String label) {
        this.label = label;
    }

    /** Tells the verdict in plain words. */
    public String label() {
        return label;
    }
}
