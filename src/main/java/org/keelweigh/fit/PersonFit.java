package org.keelweigh.fit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a boat suits one person.
 *
 * @param paddler the person
 * @param scores every row that applies to this person and boat
 * @param points {@code 0.6 worst + 0.4 mean} of the known rows that count in the person's fit, 0 to 100; nothing while
 *     none is known
 * @param aboardKg people and gear in the load that the capacity row counts, kilograms; nothing while a mass is unknown
 */
public record PersonFit(Paddler paddler, List<FitScore> scores, OptionalDouble points, OptionalDouble aboardKg) {

    private static final double WORST_SHARE = 0.6;

    public PersonFit {
        scores = List.copyOf(scores);
    }

    static PersonFit of(Paddler paddler, List<FitScore> scores, OptionalDouble aboardKg) {
        List<Double> counted = scores.stream()
                .filter(FitScore.Scored.class::isInstance)
                .map(FitScore.Scored.class::cast)
                .filter(each -> each.row().countsIn() == FitRow.CountsIn.PERSON)
                .map(FitScore.Scored::points)
                .toList();
        return new PersonFit(paddler, scores, weakestLink(counted), aboardKg);
    }

    /** Tells {@code 0.6 worst + 0.4 mean}: the weakest link rules comfort. */
    static OptionalDouble weakestLink(List<Double> points) {
        if (points.isEmpty()) {
            return OptionalDouble.empty();
        }
        double worst = points.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double mean = points.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        return OptionalDouble.of(WORST_SHARE * worst + (1 - WORST_SHARE) * mean);
    }

    /** Finds a row that could be told. */
    public Optional<FitScore.Scored> scored(String rowId) {
        return FitAssessment.scoredIn(scores, rowId);
    }

    /** Tells the rows by which the boat is out for this person, those of the boat itself among them. */
    public List<FitScore.Scored> dealBreakers() {
        return FitAssessment.dealBreakersIn(scores);
    }

    /** Tells what is not known, as sentences. */
    public List<String> unknown() {
        return FitAssessment.unknownIn(scores);
    }
}
