package org.keelweigh.cost;

import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.Coded;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;

/** What makes an item of the price book fall due. The drive and the build follow from the boat; the rest is told. */
public enum Need implements Coded {
    ALWAYS("always"),
    TAXED("taxed"),
    PAID_INSPECTION("paid-inspection"),
    MISSING_VEST("missing-vest"),
    MISSING_THROWABLE("missing-throwable"),
    MISSING_SIGNAL("missing-signal"),
    OPEN_WATER("open-water"),
    MISSING_PADDLE("missing-paddle"),
    MISSING_CHEAP_PADDLE("missing-cheap-paddle"),
    MISSING_CANOE_PADDLE("missing-canoe-paddle"),
    MISSING_OARS("missing-oars"),
    SWAMPING("swamping"),
    CART("needs-cart"),
    BALLOON_CART("needs-balloon-cart"),
    FISHING("fishing"),
    COLD_WATER("cold-water"),
    MISSING_LOCK("missing-lock"),
    RACK_BARS("needs-bars"),
    CRADLE("needs-cradle"),
    LOADING_AID("needs-loading-aid"),
    TRAILER("needs-trailer"),
    HITCH("needs-hitch"),
    HOIST("needs-hoist"),
    RENTED_STORAGE("rented-storage"),
    STORED_OUTSIDE("stored-outside"),
    INSURED("insured"),
    INSURED_MOTOR("insured-motor"),
    REGISTERED("registered"),
    DECAL("decal"),
    WATERWAY_LICENCE("waterway-licence"),
    LAUNCH_FEES("launch-fees"),
    LEAD_BATTERY("battery-lead"),
    LITHIUM_BATTERY("battery-lithium"),
    DRIVE_PROPELLER("drive-prop"),
    DRIVE_FINS("drive-fins"),
    DRIVE_MOTOR("drive-emotor"),
    BUILD_SIMPLE("build-simple"),
    BUILD_LAMINATE("build-laminate"),
    BUILD_INFLATABLE("build-inflatable"),
    BUILD_PEDAL("build-pedal"),
    BUILD_ELECTRIC("build-electric");

    private final String code;

    Need(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells whether it is for a battery, which grows old with the boat. */
    boolean isBattery() {
        return this == LEAD_BATTERY || this == LITHIUM_BATTERY;
    }

    /** Tells whether this need follows from the boat itself. */
    boolean followsFrom(BoatKind kind, HullMaterial material, DriveKind drive) {
        return switch (this) {
            case ALWAYS -> true;
            case DRIVE_PROPELLER -> drive == DriveKind.PROPELLER;
            case DRIVE_FINS -> drive == DriveKind.FINS;
            case DRIVE_MOTOR -> drive == DriveKind.MOTOR;
            case BUILD_SIMPLE, BUILD_LAMINATE, BUILD_INFLATABLE, BUILD_PEDAL, BUILD_ELECTRIC ->
                this == build(kind, material, drive);
            default -> false;
        };
    }

    private static Need build(BoatKind kind, HullMaterial material, DriveKind drive) {
        if (drive == DriveKind.MOTOR) {
            return BUILD_ELECTRIC;
        }
        if (drive.pedalled()) {
            return BUILD_PEDAL;
        }
        if (!kind.rigid()) {
            return BUILD_INFLATABLE;
        }
        return switch (material) {
            case GLASS_LAMINATE, ARAMID, CARBON, EPOXY_OVER_FOAM, WOOD -> BUILD_LAMINATE;
            case POLYETHYLENE,
                    POLYETHYLENE_FOAM_CORE,
                    POLYETHYLENE_CROSS_LINKED,
                    THERMOFORMED,
                    ABS_FOAM,
                    ALUMINIUM,
                    DROP_STITCH,
                    COATED_TUBES -> BUILD_SIMPLE;
        };
    }
}
