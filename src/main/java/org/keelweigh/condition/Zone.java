package org.keelweigh.condition;

import org.keelweigh.boat.Coded;

/** The parts of a boat and its sale that checks are sorted by, in the order in which somebody walks around the boat. */
public enum Zone implements Coded {
    IDENTITY("identity", "identity and papers"),
    LISTING("listing", "listing and seller"),
    HULL_BOTTOM("hull-bottom", "bottom of the hull"),
    KEEL_LINE("keel-line", "bow and keel line"),
    STERN("stern", "stern"),
    DECK("deck", "deck and seams"),
    DRAINS("drains", "drain holes and plugs"),
    HATCHES("hatches", "hatches and bulkheads"),
    SEAT("seat", "seat and outfitting"),
    FASTENERS("fasteners", "tracks and fasteners"),
    STEERING("steering", "steering"),
    DRIVE("drive", "drive"),
    ELECTRICS("electrics", "electrics and battery"),
    ACCESSORIES("accessories", "accessories"),
    STORAGE("storage", "how it was stored"),
    TRANSPORT("transport", "how it was moved"),
    CANOE("canoe", "canoe"),
    ROWING("rowing", "rowing boat"),
    INFLATABLE("inflatable", "inflatable");

    private final String code;
    private final String label;

    Zone(String code, String label) {
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
