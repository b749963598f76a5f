package org.keelweigh.haul;

import org.keelweigh.boat.Coded;

/** Who lifts, by the columns of the handling guide. */
public enum LifterKind implements Coded {
    MEN("men", "average man"),
    WOMEN("women", "average woman"),
    CAREFUL("careful", "older, or sore back or shoulder");

    private final String code;
    private final String label;

    LifterKind(String code, String label) {
        this.code = code;
        this.label = label;
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells it in plain words. */
    public String label() {
        return label;
    }
}
