package org.keelweigh.appraisal;

import java.util.Optional;
import java.util.OptionalDouble;
import org.keelweigh.shortlist.Display;

/**
 * How alike the boats left to choose from are on one criterion, in what it is measured in. A weight speaks of the whole fixed
 * scale; where the boats take up little of it the weight hardly matters, however much it was given (on
 * importance stated without a look at the range: Fischer 1995; on scales that do not follow the boats: Monat 2009).
 *
 * @param yardstick the criterion
 * @param difference between the best and the worst boat, within the scale, in the criterion's unit, 0 or more
 * @param points how many of the 100 value points that difference makes
 */
public record Likeness(Yardstick yardstick, double difference, double points) {

    /** Below this share of its scale a criterion is said to tell the boats hardly apart. */
    public static final double NARROW = 0.20;

    private static final double NARROW_POINTS = 100 * NARROW;
    private static final double NOTHING = 1e-9;

    /**
     * Compares the boats that are not ruled out.
     *
     * @return nothing when fewer than two are left
     */
    static Optional<Likeness> of(Measured measured, Perspective perspective, int criterion) {
        Yardstick yardstick = measured.yardsticks().all().get(criterion);
        long left = perspective.size() - ruledOut(perspective);
        if (left < 2) {
            return Optional.empty();
        }
        OptionalDouble widest = measured.situation().people().stream()
                .filter(each -> sees(measured, perspective, each))
                .mapToInt(measured.situation().people()::indexOf)
                .mapToDouble(person -> difference(measured, perspective, yardstick, person, criterion))
                .max();
        return Optional.of(new Likeness(yardstick, widest.orElse(0), perspective.spread(criterion)));
    }

    /** Looked at together, the boats differ where they differ to anybody who decides. */
    private static boolean sees(Measured measured, Perspective perspective, Participant person) {
        return perspective.person().isPresent()
                ? person.id().equals(perspective.person())
                : measured.situation().deciders().contains(person);
    }

    private static int ruledOut(Perspective perspective) {
        int count = 0;
        for (boolean each : perspective.ruledOutFlags()) {
            count += each ? 1 : 0;
        }
        return count;
    }

    private static double difference(
            Measured measured, Perspective perspective, Yardstick yardstick, int person, int criterion) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int boat = 0; boat < perspective.size(); boat++) {
            if (!perspective.ruledOut(boat)) {
                double measure = yardstick.withinScale(
                        measured.boats().get(boat).measures().get(person).get(criterion));
                least = Math.min(least, measure);
                most = Math.max(most, measure);
            }
        }
        return most - least;
    }

    /** Tells the share of the scale that the boats take up, 0 to 1. */
    public double share() {
        return difference / yardstick.scale();
    }

    /** Warns in a sentence or two where a weight does less than somebody may think; empty where the boats differ enough. */
    public Optional<String> warning(Display display) {
        if (difference < NOTHING * yardstick.scale()) {
            return Optional.of("These boats do not differ here: a weight on it tells none of them apart.");
        }
        boolean narrow = share() < NARROW;
        if (!narrow && points >= NARROW_POINTS) {
            return Optional.empty();
        }
        String differ = "These boats differ by " + yardstick.unit().writeDifference(difference, display)
                + " of a scale of " + yardstick.unit().writeDifference(yardstick.scale(), display);
        String worth = Display.number(points, 0) + " of 100 points";
        if (points >= NARROW_POINTS) {
            return Optional.of(
                    differ + ". The scale is steep there: it makes " + worth + ", so the weight still counts.");
        }
        return Optional.of(
                narrow
                        ? differ + ". A weight is for the whole scale, so it hardly matters here."
                        : differ + ", but where it is flat: it makes " + worth
                                + ", so the weight hardly matters here.");
    }
}
