package org.keelweigh.haul;

import org.keelweigh.boat.Coded;

/** How a cart holds the boat. */
public enum CartHold implements Coded {
    /** Pads or a V under the hull and straps over it. */
    CRADLE("cradle"),
    /** Posts that stand up through the drain holes. */
    POSTS("posts"),
    /** Legs that plug into sockets moulded into the hull. */
    SOCKETS("sockets"),
    /** A clamp under the stern. */
    STERN("stern"),
    /** A wheel set into the stern. */
    KEEL("keel");

    private final String code;

    CartHold(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
