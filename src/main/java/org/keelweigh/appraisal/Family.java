package org.keelweigh.appraisal;

import org.keelweigh.boat.Coded;

/** The four families of criteria, in the order in which they are shown. */
public enum Family implements Coded {
    MONEY("money", "Money"),
    CONDITION("condition", "Condition"),
    WATER("water", "On the water"),
    LAND("land", "On land");

    private final String code;
    private final String label;

    Family(String code, String label) {
        this.code = code;
        this.label = label;
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells the family's name. */
    public String label() {
        return label;
    }
}
