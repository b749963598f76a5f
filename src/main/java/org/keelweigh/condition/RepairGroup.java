package org.keelweigh.condition;

import org.keelweigh.boat.Coded;

/** What is put right together. Two faults in one group are usually cured by one repair, so their costs do not add up. */
public enum RepairGroup implements Coded {
    PAPERS("papers", "papers"),
    NOTICE("notice", "notices and plates"),
    SELLER("seller", "seller and listing"),
    HULL_WEAR("hull-wear", "wear of the hull"),
    HULL_FORM("hull-form", "shape of the hull"),
    HULL_SHELL("hull-shell", "hull shell"),
    SURFACE("surface", "surface"),
    LINES("lines", "lines and handles"),
    STEER("steer", "steering"),
    SEAM("seam", "hull and deck joint"),
    DRAIN("drain", "drain plug"),
    FIT("fit", "fit to the person"),
    HATCH("hatch", "hatches and flotation"),
    SEAT("seat", "seat"),
    FASTENER("fastener", "fasteners"),
    DRIVE_WELL("drive-well", "drive well"),
    DRIVE_INTERNAL("drive-internal", "inside of the drive"),
    DRIVE_EXTERNAL("drive-external", "blades and fins"),
    DRIVE_SUPPORT("drive-support", "spare parts for the drive"),
    MOTOR("motor", "motor"),
    BATTERY("battery", "battery"),
    WIRING("wiring", "wiring"),
    GEAR("gear", "gear"),
    BIO("bio", "cleaning"),
    TRAILER("trailer", "trailer"),
    CANOE_FRAME("canoe-frame", "rails and frame"),
    ROW_FIT("row-fit", "rowlocks"),
    TRANSOM("transom", "transom"),
    AIR("air", "air holding");

    private final String code;
    private final String label;

    RepairGroup(String code, String label) {
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

    /** Tells whether costs in this group add up, because each thing is bought for itself. */
    public boolean addsUp() {
        return this == GEAR;
    }

    /**
     * Tells whether faults in this group cost a repair at all. What the seller's behaviour warns of is paid for under the
     * checks of the boat itself.
     */
    public boolean repairable() {
        return this != SELLER;
    }

    /**
     * Tells whether faults not yet looked for belong to the boat. Doubtful papers and sellers are weighed with the
     * listing; missing gear and the trailer are bought under the cost of owning. Counting them here would count them
     * twice.
     */
    public boolean hiddenInBoat() {
        return this != SELLER && this != PAPERS && this != GEAR && this != TRAILER;
    }
}
