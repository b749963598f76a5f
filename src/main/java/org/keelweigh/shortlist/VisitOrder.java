package org.keelweigh.shortlist;

import org.keelweigh.boat.Coded;

/** In which order to make the checks of a visit. */
public enum VisitOrder implements Coded {
    WALK("walk", "a walk round the boat"),
    WORTH("worth", "most worth per minute first"),
    CHOICE("choice", "what could change the choice first");

    private final String code;
    private final String label;

    VisitOrder(String code, String label) {
        this.code = code;
        this.label = label;
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells the order in plain words. */
    public String label() {
        return label;
    }
}
