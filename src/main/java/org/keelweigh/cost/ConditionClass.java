package org.keelweigh.cost;

import org.keelweigh.boat.Coded;

/** The overall state of a boat as buyers price it. */
public enum ConditionClass implements Coded {
    EXCELLENT("excellent"),
    GOOD("good"),
    FAIR("fair"),
    POOR("poor"),
    PARTS("parts");

    private final String code;

    ConditionClass(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
