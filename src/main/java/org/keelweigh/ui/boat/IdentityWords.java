package org.keelweigh.ui.boat;

import org.keelweigh.boat.identity.IdentityVerdict;
import org.keelweigh.boat.identity.PlateState;

/** Words for what the hull number says. */
final class IdentityWords {

    private IdentityWords() {}

    static String of(IdentityVerdict verdict) {
        return switch (verdict) {
            case IN_ORDER -> "in order";
            case ASK_FOR_PAPERS -> "ask for papers";
            case RULED_OUT -> "rules the boat out";
            case NOTHING_TO_CHECK -> "nothing to check";
            case NOT_LOOKED -> "not looked at yet";
        };
    }

    static String of(PlateState state) {
        return switch (state) {
            case READ -> "read on the boat";
            case NOT_LOOKED -> "not looked yet";
            case MISSING -> "there is none";
            case UNREADABLE -> "there, but not all of it can be read";
            case TAMPERED -> "ground off, cut, filled or stamped over";
            case NOT_REQUIRED -> "this boat needs none";
        };
    }
}
