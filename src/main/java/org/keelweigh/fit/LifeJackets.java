package org.keelweigh.fit;

import org.keelweigh.boat.BoatKind;
import org.keelweigh.quantity.Length;

/**
 * Life jackets that have to be aboard on waters of the USA.
 *
 * <p>One wearable for each person; and one throwable from 16 ft on, from which canoes and kayaks are exempt; racing
 * craft and sailboards are exempt from all. Source: 33 CFR 175.13, 175.15, 175.17 as amended by 79 FR 56499 (2014).
 * States may ask more; other countries have rules of their own. Under 13 years of age it is worn under way, by federal
 * default.
 *
 * @param wearable wearable life jackets
 * @param throwing whether a throwable one is needed too
 */
public record LifeJackets(int wearable, Throwing throwing) {

    /** Below this age, in years, a life jacket is worn under way by federal default. */
    public static final int WORN_BELOW_AGE = 13;

    private static final double THROWABLE_FROM_M = 16 * Length.M_PER_FOOT;
    /** A length typed as 16 ft must count as 16 ft after conversion. */
    private static final double ROUNDING_M = 1e-9;

    /** Whether a throwable life jacket is needed. */
    public enum Throwing {
        /** None. */
        NONE,
        /** One. */
        ONE,
        /** The rule does not name this craft: ask. */
        CHECK
    }

    /** The craft that the rule tells apart. */
    public enum Craft {
        CANOE_OR_KAYAK,
        PADDLEBOARD,
        ROWING_BOAT,
        RACING_CRAFT,
        SAILBOARD;

        /** Tells which of them a kind of boat is, not raced. */
        public static Craft of(BoatKind kind) {
            return switch (kind) {
                case SIT_ON_TOP, SIT_INSIDE, PEDAL_KAYAK, CANOE, INFLATABLE_KAYAK -> CANOE_OR_KAYAK;
                case INFLATABLE_BOARD, HARD_BOARD -> PADDLEBOARD;
                case ROWING_BOAT -> ROWING_BOAT;
            };
        }
    }

    /**
     * Tells what has to be aboard.
     *
     * @param craft what it is
     * @param lengthM length, metres, above 0
     * @param persons people aboard, 1 or more
     */
    public static LifeJackets required(Craft craft, double lengthM, int persons) {
        if (!(lengthM > 0) || persons < 1) {
            throw new IllegalArgumentException(
                    "Length must be above 0 m and persons at least 1, not " + lengthM + " m and " + persons);
        }
        boolean isLong = lengthM >= THROWABLE_FROM_M - ROUNDING_M;
        return switch (craft) {
            case RACING_CRAFT, SAILBOARD -> new LifeJackets(0, Throwing.NONE);
            case CANOE_OR_KAYAK -> new LifeJackets(persons, Throwing.NONE);
            case ROWING_BOAT -> new LifeJackets(persons, isLong ? Throwing.ONE : Throwing.NONE);
            case PADDLEBOARD -> new LifeJackets(persons, isLong ? Throwing.CHECK : Throwing.NONE);
        };
    }
}
