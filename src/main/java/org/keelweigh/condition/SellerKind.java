package org.keelweigh.condition;

import org.keelweigh.boat.Coded;

/** Through whom a boat is sold. */
public enum SellerKind implements Coded {
    SHOP("shop", "shop with an address"),
    CLUB("club", "club board or a person you know"),
    PRIVATE("private", "private person, met in person"),
    REMOTE("remote", "wants remote payment or shipping");

    private final String code;
    private final String label;

    SellerKind(String code, String label) {
        this.code = code;
        this.label = label;
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells the channel in plain words. */
    public String label() {
        return label;
    }
}
