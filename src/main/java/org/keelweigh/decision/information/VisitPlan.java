package org.keelweigh.decision.information;

import java.util.List;

/** What a visit should check, in order, or that nothing left is worth checking. */
public sealed interface VisitPlan {

    /**
     * Checks to make, the most telling per minute first.
     *
     * @param steps at least one
     */
    record Route(List<Step> steps) implements VisitPlan {

        public Route {
            steps = List.copyOf(steps);
            if (steps.isEmpty()) {
                throw new IllegalArgumentException("a route must have at least one step");
            }
        }

        /** Time for all steps. */
        public double minutes() {
            return steps.stream().mapToDouble(Step::minutes).sum();
        }

        /** Expected gain of all steps together, before their cost. */
        public double gain() {
            return steps.getLast().gainSoFar();
        }

        /** Cost of all steps, in the unit of the gain. */
        public double cost() {
            return steps.stream().mapToDouble(Step::cost).sum();
        }
    }

    /**
     * No check, nor pair of checks, that fits the time gains what it costs.
     *
     * @param bestGain largest expected gain of any one check or pair that fits, before cost and time
     */
    record NothingWorthwhile(double bestGain) implements VisitPlan {}

    /**
     * One check of a route.
     *
     * @param test its number
     * @param minutes time it takes
     * @param cost what it costs beside time, in the unit of the gain
     * @param gainSoFar expected gain of this and all earlier steps together
     */
    record Step(int test, double minutes, double cost, double gainSoFar) {}
}
