package org.keelweigh.appraisal;

import org.keelweigh.boat.Coded;

/** The hard rules that rule a boat out before any value is added up. */
public enum Rule implements Coded {
    STOP_FINDING("stop-finding", "a finding that means do not buy"),
    UNSAFE("unsafe", "a fault that can kill and is not mended"),
    IDENTITY("identity", "the hull number"),
    SELLER("seller", "the seller"),
    FRAUD("fraud", "signs that often go with fraud or theft"),
    CAPACITY("capacity", "too much load for its rating"),
    WATER("water", "not made for your main water"),
    FIT("fit", "does not fit the person"),
    LIFT("lift", "too heavy to lift on the car"),
    HAUL("haul", "no way from the car to the water"),
    ROOF("roof", "too heavy for the roof"),
    CAR("car", "too long for the car"),
    STORAGE("storage", "longer than its room"),
    CASH("cash", "more cash than you have"),
    REPAIRS("repairs", "repairs cost too much of its price"),
    DRIVE_PARTS("drive-parts", "a drive fault and no parts to be had");

    private final String code;
    private final String label;

    Rule(String code, String label) {
        this.code = code;
        this.label = label;
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells the rule in plain words. */
    public String label() {
        return label;
    }
}
