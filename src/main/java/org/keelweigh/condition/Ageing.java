package org.keelweigh.condition;

import org.keelweigh.boat.Coded;

/** What makes a fault likelier as a boat gets older. */
public enum Ageing implements Coded {
    WEAR("wear", "use and age"),
    SUN("sun", "sunlight"),
    RUBBER("rubber", "ageing rubber and glue"),
    DRIVE("drive", "days of use"),
    NONE("none", "neither age nor use");

    private final String code;
    private final String label;

    Ageing(String code, String label) {
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
