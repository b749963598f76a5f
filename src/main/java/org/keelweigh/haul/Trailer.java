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

    /** A light boat trailer and its way from coupler to axle: estimates. */
    private static final double USUAL_KG = 100;

    private static final double USUAL_COUPLER_M = 3;

    public Trailer {
        if (!(massKg > 0) || !(couplerToAxleM > 0) || !Double.isFinite(massKg + couplerToAxleM + centreAheadM)) {
            throw new IllegalArgumentException(
                    "Mass (kg) and coupler distance (m) must be above 0 and the centre finite, " + "but are " + massKg
                            + ", " + couplerToAxleM + ", " + centreAheadM);
        }
    }

    /** Makes a light boat trailer of the usual size under a boat, kilograms, balanced over its axle. */
    public static Trailer usualUnder(double boatKg) {
        return new Trailer(USUAL_KG + boatKg, USUAL_COUPLER_M, 0);
    }

    /** Tells where to put the load so that the hitch carries what is usual, as a sentence. */
    public String placing(FigureWriter in) {
        return "On a trailer of about " + in.mass(USUAL_KG) + " the whole should balance "
                + in.length(centreForShareM(LEAST_SHARE)) + " to " + in.length(centreForShareM(MOST_SHARE))
                + " ahead of the axle: then " + in.mass(LEAST_SHARE * massKg) + " to " + in.mass(MOST_SHARE * massKg)
                + " rest on the hitch. Never more than hitch and car allow: read their plates.";
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
}
