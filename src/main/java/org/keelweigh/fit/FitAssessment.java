package org.keelweigh.fit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.keelweigh.boat.Boat;
import org.keelweigh.quantity.FigureWriter;

/**
 * Whether a boat suits the people, the water, the home and the car. Unknown inputs leave rows unknown and never fail.
 *
 * @param people each person apart, in the order given
 * @param boatRows the rows that do not depend on the person
 * @param waterPoints {@code 0.7 main + 0.3 hardest water}, 0 to 100; nothing while the main water is unknown
 * @param placePoints the worst of the known rows about room at home and on the car, 0 to 100; nothing while none is
 *     known
 * @param speed easy speed, with everybody known aboard
 */
public record FitAssessment(
        List<PersonFit> people,
        List<FitScore> boatRows,
        OptionalDouble waterPoints,
        OptionalDouble placePoints,
        EasySpeed speed) {

    /** One adult with a little gear, kilograms, where nobody's mass is known: estimate. */
    private static final double USUAL_ABOARD_KG = 85;

    public FitAssessment {
        people = List.copyOf(people);
        boatRows = List.copyOf(boatRows);
    }

    /**
     * Assesses a boat.
     *
     * @param catalogue rows and tables
     * @param boat the boat
     * @param aboard who will paddle it; when there are more people than seats, each goes with the heaviest others that have
     *     a seat
     * @param setting where and how it is used, kept and carried
     * @param in writes the figures of its sentences
     */
    public static FitAssessment of(
            FitCatalogue catalogue, Boat boat, List<Aboard> aboard, Setting setting, FigureWriter in) {
        PersonRows personRows = new PersonRows(catalogue, boat, aboard, setting, in);
        double loadKg = aboard.stream()
                .map(personRows::aboardKg)
                .flatMapToDouble(OptionalDouble::stream)
                .max()
                .orElse(USUAL_ABOARD_KG);
        EasySpeed speed = EasySpeed.of(boat, loadKg);
        BoatRows boatRows = new BoatRows(catalogue, boat, setting, speed, in);
        List<FitScore> ofBoat = boatRows.all();
        List<PersonFit> people = aboard.stream()
                .map(each -> PersonFit.of(
                        each.paddler(),
                        Stream.concat(personRows.of(each).stream(), ofBoat.stream())
                                .toList(),
                        personRows.aboardKg(each)))
                .toList();
        return new FitAssessment(people, ofBoat, boatRows.waterPoints(), worstPlace(ofBoat), speed);
    }

    private static OptionalDouble worstPlace(List<FitScore> rows) {
        return rows.stream()
                .filter(FitScore.Scored.class::isInstance)
                .map(FitScore.Scored.class::cast)
                .filter(each -> each.row().countsIn() == FitRow.CountsIn.PLACE)
                .mapToDouble(FitScore.Scored::points)
                .min();
    }

    /** Tells the points of the person it suits least; nothing while nobody's are known. */
    public OptionalDouble worstPerson() {
        return people.stream()
                .map(PersonFit::points)
                .flatMapToDouble(OptionalDouble::stream)
                .min();
    }

    /** Finds a row of the boat that could be told. */
    public Optional<FitScore.Scored> scored(String rowId) {
        return scoredIn(boatRows, rowId);
    }

    /** Tells the rows by which the boat is out, whoever it is for; each carries its reason. */
    public List<FitScore.Scored> dealBreakers() {
        return dealBreakersIn(boatRows);
    }

    /** Tells what is not known about boat and setting, as sentences. */
    public List<String> unknown() {
        return unknownIn(boatRows);
    }

    static Optional<FitScore.Scored> scoredIn(List<FitScore> scores, String rowId) {
        return scores.stream()
                .filter(FitScore.Scored.class::isInstance)
                .map(FitScore.Scored.class::cast)
                .filter(each -> each.row().id().equals(rowId))
                .findFirst();
    }

    static List<FitScore.Scored> dealBreakersIn(List<FitScore> scores) {
        return scores.stream()
                .filter(FitScore.Scored.class::isInstance)
                .map(FitScore.Scored.class::cast)
                .filter(each -> each.dealBreaker().isPresent())
                .toList();
    }

    static List<String> unknownIn(List<FitScore> scores) {
        return scores.stream()
                .filter(FitScore.Unknown.class::isInstance)
                .map(FitScore.Unknown.class::cast)
                .map(FitScore.Unknown::needed)
                .distinct()
                .toList();
    }
}
