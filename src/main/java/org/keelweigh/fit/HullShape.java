package org.keelweigh.fit;

import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.Coded;

/** How the bottom is shaped, which makes the same beam feel steadier or livelier. */
public enum HullShape implements Coded {
    /** Two hulls or a flat bottom: firm, then lets go. */
    FLAT_OR_TWIN("flat", -0.04),
    /** A shallow V or soft chines. */
    SHALLOW("shallow", 0),
    /** Round: lively, then holds. */
    ROUNDED("rounded", 0.04);

    private final String code;
    private final double addedM;

    HullShape(String code, double addedM) {
        this.code = code;
        this.addedM = addedM;
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells by how much it changes the beam needed, metres: common practice, no source. */
    public double addedM() {
        return addedM;
    }

    /** Tells the usual shape where nobody said: canoes are rounded to those who stand; the tables know the rest. */
    static HullShape usual(BoatKind kind, PaddlingUse use) {
        return kind == BoatKind.CANOE && use == PaddlingUse.STAND ? ROUNDED : SHALLOW;
    }
}
