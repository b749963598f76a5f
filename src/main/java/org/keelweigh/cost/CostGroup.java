package org.keelweigh.cost;

import org.keelweigh.boat.Coded;

/** The four heaps that the money of owning a boat falls into. */
public enum CostGroup implements Coded {
    PURCHASE("purchase", "buying it"),
    READY("ready", "making it ready"),
    RUNNING("running", "using it"),
    RESALE("resale", "selling it again");

    private final String code;
    private final String label;

    CostGroup(String code, String label) {
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
