package org.keelweigh.haul;

import org.keelweigh.boat.Coded;

/** The kinds of cart tyre, which decide how hard a cart rolls. */
public enum TyreClass implements Coded {
    SOLID("solid", "solid or foam tyres"),
    AIR("air", "air-filled tyres"),
    BALLOON("balloon", "wide balloon tyres");

    private final String code;
    private final String label;

    TyreClass(String code, String label) {
        this.code = code;
        this.label = label;
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells the name in plain words, lower case. */
    public String label() {
        return label;
    }
}
