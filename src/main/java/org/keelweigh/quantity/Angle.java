package org.keelweigh.quantity;

/**
 * A plane angle.
 *
 * @param rad radians; any finite number
 */
public record Angle(double rad) {

    public Angle {
        Finite.require("angle", rad, "rad");
    }

    /** Makes an angle of {@code degrees}. */
    public static Angle ofDegrees(double degrees) {
        return new Angle(Math.toRadians(degrees));
    }

    /** Makes the angle of a slope that rises {@code percent} metres on 100 m of level distance. */
    public static Angle ofGradePercent(double percent) {
        return new Angle(Math.atan(percent / 100));
    }

    /** Tells this angle in degrees. */
    public double degrees() {
        return Math.toDegrees(rad);
    }

    /** Tells the rise in metres on 100 m of level distance. */
    public double gradePercent() {
        return 100 * Math.tan(rad);
    }
}
