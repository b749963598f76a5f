package org.keelweigh.condition;

/**
 * How much air an inflatable lost between two readings of its pressure, with the change of temperature taken out.
 *
 * <p>By the gas law at constant volume the later absolute pressure is brought back to the first temperature:
 * {@code p2c = (p2 + p_atm)·T1/T2 - p_atm}, and the loss is {@code (p1 - p2c)/p1}. Gauge pressures in pascals, absolute
 * temperatures in kelvins. The volume is taken as constant, which holds for a board at working pressure; soft tubes stretch
 * a little, so that their true loss is somewhat larger.
 */
public final class AirLoss {

    /** The standard atmosphere, pascals (ISO 2533). */
    public static final double STANDARD_ATMOSPHERE_PA = 101_325;

    private static final double DAY_FINE = 0.05;
    private static final double DAY_MINOR = 0.15;
    private static final double DAY_MAJOR = 0.40;
    private static final double TWO_HOURS_FINE = 0.01;
    private static final double TWO_HOURS_MINOR = 0.03;
    private static final double TWO_HOURS_MAJOR = 0.10;

    private AirLoss() {}

    /**
     * Computes the share of the first gauge pressure that was lost.
     *
     * @param firstPa first gauge pressure, pascals, above 0
     * @param firstK temperature at the first reading, kelvins, above 0
     * @param laterPa later gauge pressure, pascals, 0 or more
     * @param laterK temperature at the later reading, kelvins, above 0
     * @param atmospherePa pressure of the air around, pascals, above 0
     * @return the share, below 0 if it seems to have gained air, which readings do within the gauge's error
     */
    public static double share(double firstPa, double firstK, double laterPa, double laterK, double atmospherePa) {
        requirePositive("first gauge pressure", firstPa, "pascals");
        requirePositive("first temperature", firstK, "kelvins");
        requirePositive("later temperature", laterK, "kelvins");
        requirePositive("pressure of the air around", atmospherePa, "pascals");
        if (!(laterPa >= 0) || Double.isInfinite(laterPa)) {
            throw new IllegalArgumentException("The later gauge pressure is 0 pascals or more, not " + laterPa);
        }
        double corrected = (laterPa + atmospherePa) * firstK / laterK - atmospherePa;
        return (firstPa - corrected) / firstPa;
    }

    /** Grades the loss over a day: up to 5 % is fine, 15 % minor, 40 % major, more a stop. Estimate. */
    public static Outcome outcomeAfterDay(double lossShare) {
        return grade(lossShare, DAY_FINE, DAY_MINOR, DAY_MAJOR);
    }

    /** Grades the loss over two hours: up to 1 % is fine, 3 % minor, 10 % major, more a stop. Estimate. */
    public static Outcome outcomeAfterTwoHours(double lossShare) {
        return grade(lossShare, TWO_HOURS_FINE, TWO_HOURS_MINOR, TWO_HOURS_MAJOR);
    }

    private static Outcome grade(double loss, double fine, double minor, double major) {
        if (Double.isNaN(loss) || loss > 1) {
            throw new IllegalArgumentException("A loss is at most the whole pressure, a share of 1, but is " + loss);
        }
        if (loss <= fine) {
            return Outcome.FINE;
        }
        return loss <= minor ? Outcome.MINOR : loss <= major ? Outcome.MAJOR : Outcome.STOP;
    }

    private static void requirePositive(String what, double value, String unit) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("The " + what + " has to be above 0 " + unit + ", but is " + value);
        }
    }
}
