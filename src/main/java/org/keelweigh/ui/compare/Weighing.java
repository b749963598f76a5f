package org.keelweigh.ui.compare;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.keelweigh.appraisal.Measured;
import org.keelweigh.appraisal.Participant;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.shortlist.PersonId;

/**
 * The points on the sliders, and what follows from them.
 *
 * @param measured the measured boats
 * @param stated the perspective with the weights that are saved
 * @param points points by criterion, 0 to 100
 */
record Weighing(Measured measured, Perspective stated, Map<String, Double> points) {

    private static final double ALL_POINTS = 100;

    /** Starts from what is saved for one person, or for everybody together. */
    static Weighing of(Measured measured, Optional<PersonId> person) {
        Perspective stated = measured.perspective(person);
        return new Weighing(measured, stated, savedPoints(measured, stated));
    }

    private static Map<String, Double> savedPoints(Measured measured, Perspective stated) {
        if (!together(measured, stated)) {
            Participant decider = measured.situation().deciders().stream()
                    .filter(each -> each.id().equals(stated.person()))
                    .findFirst()
                    .orElseThrow();
            return measured.yardsticks().points(decider.data());
        }
        Map<String, Double> shares = new LinkedHashMap<>();
        for (Yardstick each : measured.yardsticks().all()) {
            shares.put(each.id(), ALL_POINTS * stated.weights().share(each.id()));
        }
        return shares;
    }

    private static boolean together(Measured measured, Perspective stated) {
        return stated.person().isEmpty() && measured.situation().deciders().size() > 1;
    }

    /** Tells whether several people are looked at together, so that the points are nobody's own. */
    boolean together() {
        return together(measured, stated);
    }

    /** Tells whether the sliders stand elsewhere than what is saved. */
    boolean moved() {
        return !points.equals(savedPoints(measured, stated));
    }

    Weighing with(String criterion, double value) {
        Map<String, Double> changed = new LinkedHashMap<>(points);
        changed.put(criterion, value);
        return withPoints(changed);
    }

    Weighing withPoints(Map<String, Double> others) {
        return new Weighing(measured, stated, new LinkedHashMap<>(others));
    }

    /** Tells the perspective that the sliders make. */
    Perspective perspective() {
        return moved() ? stated.with(measured.yardsticks().weights(points)) : stated;
    }
}
