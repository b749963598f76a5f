package org.keelweigh.fit;

import org.keelweigh.boat.Coded;

/** The waters people go out on. */
public enum Waters implements Coded {
    POND("pond", "pond or small lake"),
    SLOW_RIVER("slow-river", "slow river"),
    LAKE_CHOP("lake-chop", "lake with chop under 0.3 m"),
    SHELTERED_COAST("sheltered-coast", "sheltered coast"),
    SMALL_SURF("small-surf", "small surf"),
    WHITEWATER("whitewater", "whitewater I to II");

    private final String code;
    private final String label;

    Waters(String code, String label) {
        this.code = code;
        this.label = label;
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells the water in plain words. */
    public String label() {
        return label;
    }
}
