package org.keelweigh.shortlist;

import java.util.Optional;
import java.util.function.BiFunction;

/** The bounds outside which a typed number is refused, each with the way it is written. */
public enum Bound {
    LENGTH("length", 1, 12, Display::length),
    BEAM("beam", 0.3, 3, Display::breadth),
    DRAUGHT("draught", 0.01, 1.5, Display::breadth),
    SEAT_WIDTH("seat width", 0.2, 2, Display::breadth),
    STATION("seat's distance from the stern", 0, 12, Display::length),
    BOAT_MASS("mass", 2, 300, Display::mass),
    PART_MASS("mass", 0, 100, Display::mass),
    RATED_LOAD("rated load", 20, 1500, Display::mass),
    MODEL_YEAR("model year", 1900, 2100, (display, value) -> Display.number(value, 0)
            .replace(",", "")),
    MONEY("amount", 0, 1_000_000, Display::money),
    DISTANCE("distance", 0, 5_000_000, Display::way),
    DAYS("number of days", 0, 3650, (display, value) -> Display.number(value, 0) + " days"),
    PERSON_MASS("body mass", 10, 250, Display::mass),
    PERSON_HEIGHT("height", 0.8, 2.4, Display::length),
    HIP_WIDTH("width across the hips", 0.2, 0.9, Display::breadth),
    LIFT_LIMIT("lift limit", 1, 120, Display::mass),
    HAUL_LIMIT("pull limit", 10, 1000, Display::force),
    GEAR_MASS("gear", 0, 300, Display::mass),
    OUTINGS("outings a year", 0.5, 366, (display, value) -> Display.number(value, value < 10 ? 1 : 0)),
    GRADE("slope", -60, 60, (display, value) -> Display.number(value, 0) + " %"),
    STEPS("number of steps", 0, 500, (display, value) -> Display.number(value, 0)),
    STEP_HEIGHT("height of a step", 0, 1, Display::breadth),
    WATER_DEPTH("depth", 0.02, 200, Display::length),
    CAR_LENGTH("length of the car", 1.5, 12, Display::length),
    ROOF_LIMIT("roof load", 5, 500, Display::mass),
    BAR_HEIGHT("height of the bars", 0.5, 3.5, Display::length),
    BAR_SPREAD("distance between the bars", 0.2, 4, Display::length),
    ROOM_LENGTH("length of the room", 0.5, 50, Display::length),
    CART_RATING("rating of the cart", 5, 500, Display::mass),
    YEARS("number of years", 1, 20, (display, value) -> Display.number(value, 0) + " years"),
    RATE("rate", 0, 0.3, Display::percent),
    PRICE_FACTOR(
            "units of your money for one US dollar", 0.0001, 100_000, (display, value) -> Display.number(value, 2)),
    LIKING("liking", 0, 10, (display, value) -> Display.number(value, 0)),
    WEED_LEVEL("weed level", 0, 3, (display, value) -> Display.number(value, 0)),
    POINTS("points", 0, 100, (display, value) -> Display.number(value, 0));

    private static final double M_PER_INCH = 0.0254;
    private static final double LEAST_LIKE_INCHES = 50;

    private final String what;
    private final double least;
    private final double most;
    private final BiFunction<Display, Double, String> write;

    Bound(String what, double least, double most, BiFunction<Display, Double, String> write) {
        this.what = what;
        this.least = least;
        this.most = most;
        this.write = write;
    }

    /** Tells the least that is kept, in SI units. */
    public double least() {
        return least;
    }

    /** Tells the most that is kept, in SI units. */
    public double most() {
        return most;
    }

    /** Says what is wrong with a value outside the bounds; empty when it is inside. */
    public Optional<String> complaint(double value, Display display) {
        if (value >= least && value <= most) {
            return Optional.empty();
        }
        return Optional.of("The " + what + " must be between " + write.apply(display, least) + " and "
                + write.apply(display, most) + "; " + (Double.isFinite(value) ? write.apply(display, value) : "this")
                + " is " + (value < least ? "too little." : "too much.")
                + inchesHint(value, display));
    }

    /** A length such as 144 is what somebody typed who thinks in inches. */
    private String inchesHint(double value, Display display) {
        double meant = value * M_PER_INCH;
        boolean likely = this == LENGTH && value > LEAST_LIKE_INCHES && meant <= most;
        return likely
                ? " If you meant " + Display.number(value, 0) + " inches, that is " + display.length(meant) + "."
                : "";
    }
}
