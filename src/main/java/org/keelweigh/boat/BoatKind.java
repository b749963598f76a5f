package org.keelweigh.boat;

/** The kinds of small boat that Keelweigh compares. */
public enum BoatKind implements Coded {
    SIT_ON_TOP("sot", "sit-on-top kayak"),
    SIT_INSIDE("sink", "sit-inside kayak"),
    PEDAL_KAYAK("pedal", "pedal-drive kayak"),
    CANOE("canoe", "canoe"),
    INFLATABLE_BOARD("isup", "inflatable paddleboard"),
    HARD_BOARD("hsup", "hard paddleboard"),
    INFLATABLE_KAYAK("ikayak", "inflatable kayak or canoe"),
    ROWING_BOAT("row", "rowing boat or dinghy");

    private final String code;
    private final String label;

    BoatKind(String code, String label) {
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

    /** Tells whether the hull keeps its shape without air. */
    public boolean rigid() {
        return this != INFLATABLE_BOARD && this != INFLATABLE_KAYAK;
    }

    /** Tells whether it is a board that a person usually stands on. */
    public boolean board() {
        return this == INFLATABLE_BOARD || this == HARD_BOARD;
    }

    /** Tells whether drain holes run through the hull, where a post cart would stand. */
    public boolean selfDraining() {
        return this == SIT_ON_TOP || this == PEDAL_KAYAK;
    }
}
