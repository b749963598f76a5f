package org.keelweigh.haul;

import org.keelweigh.quantity.FigureWriter;

/**
 * A loaded single-axle trailer and what it puts on the car's hitch.
 *
 * @param massKg trailer with its load, kilograms, above 0
 * @param couplerToAxleM distance from coupler to axle, metres, above 0
 * @param centreAheadM centre of gravity ahead of the axle, metres
 */
public record Trailer(double massKg, double couplerToAxleM, double centreAheadM) {

    /** Usual share on the hitch in North America, printed in owner's manuals; a convention, not a law. */
    public static final double LEAST_SHARE = 0.10;
    /** The upper end of it. */
    public static final double MOST_SHARE = 0.15;

    public Trailer {
        if (!(massKg > 0) || !(couplerToAxleM > 0) || !Double.isFinite(massKg + couplerToAxleM + centreAheadM)) {
            throw new IllegalArgumentException(
                    "Mass (kg) and coupler distance (m) must be above 0 and the centre finite, " + "but are " + massKg
                            + ", " + couplerToAxleM + ", " + centreAheadM);
        }
    }

    /** Tells the load on the hitch, {@code m·d/T}, kilograms. */
    public double tongueKg() {
        return massKg * tongueShare();
    }

    /** Tells the load on the hitch as share of the whole. */
    public double tongueShare() {
        return centreAheadM / couplerToAxleM;
    }

    /** Tells how far ahead of the axle the centre must lie for a share of the load on the hitch, metres. */
    public double centreForShareM(double share) {
        return share * couplerToAxleM;
    }

    /** Tells what to do about the load on the hitch, as a sentence. */
    public String advice(FigureWriter in) {
        String now = in.mass(Math.max(0, tongueKg())) + ", " + in.percent(tongueShare()) + ", rests on the hitch";
        String manual = " Never more than hitch and car allow: read their plates.";
        if (tongueShare() < LEAST_SHARE) {
            return now
                    + ": too little makes a trailer sway; 10 to 15 % is usual, 5 to 10 % for light boat trailers in "
                    + "some countries. Move the boat forward." + manual;
        }
        return tongueShare() > MOST_SHARE
                ? now + ": more than the usual 10 to 15 %. Move the boat back." + manual
                : now + ", within the usual 10 to 15 %." + manual;
    }
}
