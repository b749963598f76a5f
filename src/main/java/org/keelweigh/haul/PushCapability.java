package org.keelweigh.haul;

import org.keelweigh.quantity.Mass;

/**
 * What three in four women can push without strain: a yardstick for pulls that nobody has tested.
 *
 * <p>Mean force in kilograms-force with hand height {@code V} (m), distance {@code D} (m) and pushes a minute {@code
 * F}:
 *
 * <pre>
 * start  36.9 (−0.5304 + V/0.3361 − V²/0.6915)(1.0286 − D/72.22 + D²/9782)(0.7251 − ln F/13.19 − ln²F/197.3)
 * steady 25.5 (−0.6539 + V/0.2941 − V²/0.5722)(1.0391 − D/52.91 + D²/7975)(0.6086 − ln F/11.95 − ln²F/304.4)
 * </pre>
 *
 * <p>Three in four can do {@code mean (1 − 0.675 CV)}, CV 0.214 and 0.286. Source: J. R. Potvin, V. M. Ciriello, S. H.
 * Snook, W. S. Maynard, G. E. Brogmus, <i>Ergonomics</i> 64(8):955–970, 2021, Table 4. Pushing, not pulling: pulls are
 * a little lower or the same.
 *
 * @param startMeanN mean force to set off, newtons
 * @param startN what three in four can do to set off, newtons
 * @param steadyMeanN mean force to keep moving, newtons
 * @param steadyN what three in four can keep up, newtons
 */
public record PushCapability(double startMeanN, double startN, double steadyMeanN, double steadyN) {

    /** The longest distance the equations cover, metres. */
    public static final double LONGEST_M = 61;
    /** The shortest. */
    public static final double SHORTEST_M = 2.1;
    /** One standard normal quartile as used in the source. */
    private static final double QUARTILE = 0.675;

    private static final double START_CV = 0.214;
    private static final double STEADY_CV = 0.286;

    /**
     * Computes it.
     *
     * @param handM hand height, metres, 0.5 to 1.4
     * @param distanceM distance, metres, 2.1 to 61
     * @param perMinute pushes a minute, 1/480 to 4
     */
    public static PushCapability of(double handM, double distanceM, double perMinute) {
        requireWithin("hand height (m)", handM, 0.5, 1.4);
        requireWithin("distance (m)", distanceM, SHORTEST_M, LONGEST_M);
        requireWithin("pushes a minute", perMinute, 1.0 / 480, 4);
        double often = Math.log(perMinute);
        double start = 36.9
                * (-0.5304 + handM / 0.3361 - handM * handM / 0.6915)
                * (1.0286 - distanceM / 72.22 + distanceM * distanceM / 9782)
                * (0.7251 - often / 13.19 - often * often / 197.3);
        double steady = 25.5
                * (-0.6539 + handM / 0.2941 - handM * handM / 0.5722)
                * (1.0391 - distanceM / 52.91 + distanceM * distanceM / 7975)
                * (0.6086 - often / 11.95 - often * often / 304.4);
        return new PushCapability(
                start * Mass.STANDARD_GRAVITY,
                threeInFour(start, START_CV) * Mass.STANDARD_GRAVITY,
                steady * Mass.STANDARD_GRAVITY,
                threeInFour(steady, STEADY_CV) * Mass.STANDARD_GRAVITY);
    }

    /** Tells what three in four can do: {@code mean (1 − 0.675 CV)}, in the unit of the mean. */
    static double threeInFour(double mean, double coefficientOfVariation) {
        return mean * (1 - QUARTILE * coefficientOfVariation);
    }

    private static void requireWithin(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    "The " + what + " must be between " + least + " and " + most + ", not " + value);
        }
    }
}
