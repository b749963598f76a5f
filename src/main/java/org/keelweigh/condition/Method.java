package org.keelweigh.condition;

import org.keelweigh.boat.Coded;

/** How somebody came to know the outcome of a check. */
public enum Method implements Coded {
    SELLER_STATEMENT("seller", "the seller said so"),
    LISTING_PHOTOS("photos", "seen in the listing's pictures"),
    REQUESTED_PHOTOS("close-photos", "seen in close pictures that were asked for"),
    SEEN("seen", "seen at the boat, not touched"),
    TOUCHED("touched", "touched and measured at the boat"),
    ON_WATER("on-water", "tried on the water"),
    SECOND_PERSON("second-person", "repeated by a second person"),
    REPAIRER("repairer", "looked at by a shop or repairer");

    private final String code;
    private final String label;

    Method(String code, String label) {
        this.code = code;
        this.label = label;
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells the method in plain words. */
    public String label() {
        return label;
    }
}
