package org.keelweigh.condition;

import org.keelweigh.boat.Coded;

/** Whether a check needs the boat in water, or water in the boat. */
public enum WaterNeed implements Coded {
    NEEDS("needs", "needs water"),
    HELPS("helps", "better on the water"),
    NO("no", "done dry");

    private final String code;
    private final String label;

    WaterNeed(String code, String label) {
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
