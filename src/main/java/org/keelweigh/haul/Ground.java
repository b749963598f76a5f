package org.keelweigh.haul;

import java.util.ArrayList;
import java.util.List;
import org.keelweigh.quantity.FigureWriter;

/**
 * A stretch of which every figure is known, if only by assumption.
 *
 * @param name what people call it
 * @param surface the surface
 * @param distanceM metres
 * @param slopeRad radians, 0 or more
 * @param steps number of steps
 * @param stepHeightM tallest step or kerb, metres
 * @param assumptions what was assumed, as sentences
 */
public record Ground(
        String name,
        Surface surface,
        double distanceM,
        double slopeRad,
        int steps,
        double stepHeightM,
        List<String> assumptions) {

    /** Up to so many steps a boat can be bumped over one by one; more are stairs (common practice, no source). */
    static final int MOST_STEPS_ROLLED = 5;

    /** The code of the surface that is assumed where nobody gave one (estimate: most launches have a trodden path). */
    public static final String USUAL_SURFACE = "packed-trail";

    private static final double USUAL_DISTANCE_M = 60;
    private static final double USUAL_STEP_M = 0.17;

    public Ground {
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Fills the gaps of a stretch.
     *
     * @param in writes the figures that are assumed
     * @throws IllegalArgumentException if it names a surface that the catalogue does not have
     */
    public static Ground of(Stretch stretch, HaulCatalogue catalogue, FigureWriter in) {
        List<String> assumed = new ArrayList<>();
        Double distance = stretch.distanceM();
        if (distance == null) {
            distance = USUAL_DISTANCE_M;
            assumed.add(stretch.name() + ": nobody gave the distance; assumed " + in.way(distance) + ".");
        }
        String surface = stretch.surface();
        if (surface == null) {
            surface = USUAL_SURFACE;
            assumed.add(stretch.name() + ": nobody gave the surface; assumed a packed trail.");
        }
        Double slope = stretch.slopeRad();
        if (slope == null) {
            slope = 0.0;
            assumed.add(stretch.name() + ": nobody gave the slope; assumed level.");
        }
        int steps = stretch.steps() == null ? 0 : stretch.steps();
        Double height = stretch.stepHeightM();
        if (height == null) {
            height = steps > 0 ? USUAL_STEP_M : 0;
            if (steps > 0) {
                assumed.add(
                        stretch.name() + ": nobody gave the height of the steps; assumed " + in.small(height) + ".");
            }
        }
        return new Ground(stretch.name(), catalogue.surface(surface), distance, slope, steps, height, assumed);
    }

    /** Tells whether the boat has to be carried over part of it or all. */
    public boolean carried() {
        return stairs() || surface.rolling().isEmpty();
    }

    /** Tells whether the boat is rolled over part of it or all. */
    public boolean rolled() {
        return !surface.rolling().isEmpty() && (distanceM > 0 || !stairs());
    }

    /** Makes the part of it that is rolled: without its stairs, if it has any. */
    Ground rolledPart() {
        return stairs() ? new Ground(name, surface, distanceM, slopeRad, 0, 0, assumptions) : this;
    }

    private boolean stairs() {
        return steps > MOST_STEPS_ROLLED;
    }
}
