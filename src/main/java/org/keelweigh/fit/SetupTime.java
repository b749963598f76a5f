package org.keelweigh.fit;

import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;

/** Minutes from car to afloat, without queueing: estimates from common practice, no source. */
final class SetupTime {

    private static final double UNLOAD_MIN = 4;
    private static final double INFLATE_BOARD_MIN = 8;
    private static final double INFLATE_KAYAK_MIN = 10;
    private static final double RIG_PEDALS_MIN = 7;
    private static final double RIG_MOTOR_MIN = 6;
    private static final double WALK_M_PER_MIN = 50;

    private SetupTime() {}

    static double minutes(Boat boat, double pathM) {
        double air = boat.kind() == BoatKind.INFLATABLE_BOARD
                ? INFLATE_BOARD_MIN
                : boat.kind() == BoatKind.INFLATABLE_KAYAK ? INFLATE_KAYAK_MIN : 0;
        double rig =
                switch (boat.drive()) {
                    case NONE -> 0;
                    case PROPELLER, FINS -> RIG_PEDALS_MIN;
                    case MOTOR -> RIG_MOTOR_MIN;
                };
        return UNLOAD_MIN + air + rig + pathM / WALK_M_PER_MIN;
    }
}
