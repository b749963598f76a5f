package org.keelweigh.decision.opinion;

/**
 * How strongly a lead of {@code d} in one criterion is preferred, from 0 (not at all) to 1 (strictly): the six types of
 * Brans and Vincke 1985. A lead of 0 or less is never preferred.
 */
public sealed interface PreferenceFunction {

    /** Returns the degree of preference, 0 to 1, of a lead in the criterion's unit. */
    double degree(double lead);

    /** Any lead is strictly preferred. */
    record Usual() implements PreferenceFunction {
        @Override
        public double degree(double lead) {
            return lead > 0 ? 1 : 0;
        }
    }

    /**
     * Strict preference above a threshold, none up to it.
     *
     * @param indifference largest lead that does not matter, 0 or more
     */
    record UShape(double indifference) implements PreferenceFunction {

        /** Refuses a negative threshold. */
        public UShape {
            requireAtLeastZero(indifference);
        }

        @Override
        public double degree(double lead) {
            return lead > indifference ? 1 : 0;
        }
    }

    /**
     * Preference grows with the lead up to a threshold.
     *
     * @param preference smallest lead that is strictly preferred, above 0
     */
    record VShape(double preference) implements PreferenceFunction {

        /** Refuses a threshold that is not positive. */
        public VShape {
            requireAbove(0, preference);
        }

        @Override
        public double degree(double lead) {
            return Math.clamp(lead / preference, 0, 1);
        }
    }

    /**
     * Half preference between two thresholds.
     *
     * @param indifference largest lead that does not matter, 0 or more
     * @param preference largest lead that is only half preferred, above {@code indifference}
     */
    record Level(double indifference, double preference) implements PreferenceFunction {

        /** Refuses thresholds in the wrong order. */
        public Level {
            requireAtLeastZero(indifference);
            requireAbove(indifference, preference);
        }

        @Override
        public double degree(double lead) {
            if (lead > preference) {
                return 1;
            }
            return lead > indifference ? 0.5 : 0;
        }
    }

    /**
     * Preference grows between two thresholds.
     *
     * @param indifference largest lead that does not matter, 0 or more
     * @param preference smallest lead that is strictly preferred, above {@code indifference}
     */
    record Linear(double indifference, double preference) implements PreferenceFunction {

        /** Refuses thresholds in the wrong order. */
        public Linear {
            requireAtLeastZero(indifference);
            requireAbove(indifference, preference);
        }

        @Override
        public double degree(double lead) {
            return Math.clamp((lead - indifference) / (preference - indifference), 0, 1);
        }
    }

    /**
     * Preference grows smoothly: {@code 1 − exp(−d² / 2σ²)}.
     *
     * @param sigma lead at the steepest point, above 0
     */
    record Gaussian(double sigma) implements PreferenceFunction {

        /** Refuses a sigma that is not positive. */
        public Gaussian {
            requireAbove(0, sigma);
        }

        @Override
        public double degree(double lead) {
            return lead > 0 ? -Math.expm1(-lead * lead / (2 * sigma * sigma)) : 0;
        }
    }

    private static void requireAtLeastZero(double threshold) {
        if (!(threshold >= 0)) {
            throw new IllegalArgumentException("A preference threshold must be 0 or more, but is " + threshold);
        }
    }

    private static void requireAbove(double bound, double threshold) {
        if (!(threshold > bound)) {
            throw new IllegalArgumentException(
                    "A preference threshold must be above " + bound + ", but is " + threshold);
        }
    }
}
