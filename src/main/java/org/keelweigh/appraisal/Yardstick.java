package org.keelweigh.appraisal;

import org.keelweigh.decision.Criterion;

/**
 * A criterion with what people need to know about it.
 *
 * @param measure what it measures
 * @param criterion the criterion of the decision model; its value function is in the shortlist's money
 * @param family the family it is shown in
 * @param unit what it is measured in
 * @param personal whether the measure differs from person to person
 * @param swingFrom the worst end of the step whose worth is asked for
 * @param swingTo the best end of that step
 * @param meaning what it means, as a sentence
 */
public record Yardstick(
        Measure measure,
        Criterion criterion,
        Family family,
        MeasureUnit unit,
        boolean personal,
        double swingFrom,
        double swingTo,
        String meaning) {

    /** Tells the criterion's id. */
    public String id() {
        return criterion.id();
    }

    /** Tells how long the step is whose worth is asked for, in the criterion's unit. */
    public double scale() {
        return Math.abs(swingTo - swingFrom);
    }

    /** Brings a measure into that step: beyond its ends nothing changes. */
    double withinScale(double measure) {
        return Math.clamp(measure, Math.min(swingFrom, swingTo), Math.max(swingFrom, swingTo));
    }

    /** Tells the criterion's name. */
    public String name() {
        return criterion.name();
    }
}
