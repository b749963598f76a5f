package org.keelweigh.appraisal;

import org.keelweigh.boat.Coded;

/** The criteria that the program knows how to measure; the catalogue may leave some out but cannot add to them. */
public enum Measure implements Coded {
    COST("cost"),
    REPAIR_RISK("repair-risk"),
    WALK_RISK("walk-risk"),
    EVIDENCE("evidence"),
    SPARES("spares"),
    FIT_PERSON("fit-person"),
    FIT_WATER("fit-water"),
    STABILITY("stability"),
    SPEED("speed"),
    DELIGHT("delight"),
    LIFT("lift"),
    HAUL("haul"),
    ROOM("room"),
    WAIT("wait");

    private final String code;

    Measure(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
