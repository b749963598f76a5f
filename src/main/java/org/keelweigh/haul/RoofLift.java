package org.keelweigh.haul;

/**
 * One lift on to the roof, for one person.
 *
 * @param method how it is lifted
 * @param loadKg what this person holds, kilograms
 * @param recommendedKg recommended weight limit of the revised lifting equation, the lower of both ends of the lift,
 *     kilograms; 0 where it recommends no lift
 * @param index lifting index {@code load / recommended}; infinite where nothing is recommended
 * @param personKg the limit that the person tested, or the guide's value, kilograms
 * @param tested whether the person tested it
 * @param liftRatio {@code load / personKg}
 * @param band how hard it is by the worse of both yardsticks
 */
public record RoofLift(
        Method method,
        double loadKg,
        double recommendedKg,
        double index,
        double personKg,
        boolean tested,
        double liftRatio,
        LiftBand band) {

    /**
     * Up to so many times their limit people lift with effort; beyond, they should not (common practice, no source).
     */
    public static final double MOST_RATIO = 1.5;

    /** How a boat is lifted on to a roof. */
    public enum Method {
        /** The whole boat by one person. */
        WHOLE_ALONE("the whole boat alone"),
        /** One of two people, the heavier end. */
        TWO_PEOPLE("two people, the heavier end"),
        /** Bow on to the rear bar, stern on the ground. */
        FIRST_END("alone, the bow first on to the rear bar"),
        /** Stern up, the bow resting on the rear bar. */
        SECOND_END("alone, then the stern");

        private final String label;

        Method(String label) {
            this.label = label;
        }

        /** Tells it in plain words, lower case. */
        public String label() {
            return label;
        }
    }

    static RoofLift of(Method method, double loadKg, double recommendedKg, double personKg, boolean tested) {
        double index = loadKg / recommendedKg;
        double ratio = loadKg / personKg;
        LiftBand band = ratio > MOST_RATIO || index > LiftResult.TOO_MUCH
                ? LiftBand.NO
                : ratio > 1 || index > LiftResult.DESIGN_GOAL ? LiftBand.HARD : LiftBand.COMFORTABLE;
        return new RoofLift(method, loadKg, recommendedKg, index, personKg, tested, ratio, band);
    }

    /** Tells the limit that counts, kilograms: the lower of the equation's and the person's. */
    public double limitKg() {
        return Math.min(recommendedKg, personKg);
    }
}
