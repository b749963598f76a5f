package org.keelweigh.shortlist;

import org.keelweigh.boat.Coded;

/** The units in which people read and type. What is stored is always SI. */
public enum UnitSystem implements Coded {
    METRIC("metric"),
    US("us");

    private final String code;

    UnitSystem(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
