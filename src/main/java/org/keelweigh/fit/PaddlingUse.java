package org.keelweigh.fit;

import org.keelweigh.boat.Coded;

/** How a person means to use the boat, which decides how much beam they need. */
public enum PaddlingUse implements Coded {
    SIT_CALM_FIRST_TIMER("sit-calm-first", "sits, calm water, first boat"),
    SIT_CHOP_FIRST_TIMER("sit-chop-first", "sits, lake with chop, first boat"),
    SIT_EXPERIENCED("sit-experienced", "sits, experienced"),
    FISH_SEATED("fish-seated", "fishes seated"),
    STAND("stand", "stands up, to fish or to paddle");

    private final String code;
    private final String label;

    PaddlingUse(String code, String label) {
        this.code = code;
        this.label = label;
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells the use in plain words. */
    public String label() {
        return label;
    }
}
