package org.keelweigh.appraisal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.keelweigh.decision.Ranking;
import org.keelweigh.decision.group.Group;

/**
 * Several deciders side by side: whom each would choose, where they differ, and which boats all can live with.
 *
 * <p>Measures can differ from person to person, so each person has a block of columns of their own in the table that is
 * handed to {@link Group}, and weight in that block alone.
 *
 * @param voices each person's own choice
 * @param contrasts criteria by how far they drive the people apart, most first
 * @param compromise the boat that is first by the mean of everybody's totals; empty if all are ruled out
 * @param leastRegret the boat about which the most disappointed person is least disappointed
 * @param borda the boat with most points when each person ranks the boats
 * @param shares each boat's figures
 */
public record TogetherReport(
        List<Voice> voices,
        List<Disagreement> contrasts,
        OptionalInt compromise,
        OptionalInt leastRegret,
        OptionalInt borda,
        List<Share> shares) {

    public TogetherReport {
        voices = List.copyOf(voices);
        contrasts = List.copyOf(contrasts);
        shares = List.copyOf(shares);
    }

    /**
     * One person's own view.
     *
     * @param name their name
     * @param leader the boat they would choose; empty if all are ruled out
     * @param margin points by which it leads for them; empty with fewer than two boats
     */
    public record Voice(String name, OptionalInt leader, OptionalDouble margin) {}

    /**
     * One boat among several people.
     *
     * @param totals what it is worth to each, 0 to 100
     * @param largestRegret points that the most disappointed person gives up with it
     * @param bordaPoints one for each boat it beats with each person, half for a tie
     */
    public record Share(List<Double> totals, double largestRegret, double bordaPoints) {
        public Share {
            totals = List.copyOf(totals);
        }
    }

    /** Puts the deciders side by side; empty when there is only one, or no boat. */
    public static Optional<TogetherReport> of(Measured measured) {
        List<Perspective> people = measured.situation().deciders().stream()
                .map(measured::perspective)
                .toList();
        return people.size() < 2 || measured.boats().isEmpty() ? Optional.empty() : Optional.of(of(people));
    }

    private static TogetherReport of(List<Perspective> people) {
        Group group = group(people);
        List<Voice> voices = people.stream()
                .map(each -> new Voice(
                        each.name(), each.ranking().leader(), each.ranking().margin()))
                .toList();
        Ranking mean = group.meanWeights();
        return new TogetherReport(
                voices,
                Disagreement.of(people),
                mean.leader(),
                group.leastRegret(),
                group.borda(),
                IntStream.range(0, people.getFirst().size())
                        .mapToObj(boat -> share(people, group, boat))
                        .toList());
    }

    private static Share share(List<Perspective> people, Group group, int boat) {
        return new Share(
                people.stream().map(each -> each.ranking().total(boat)).toList(),
                group.largestRegret(boat),
                group.bordaPoints(boat));
    }

    private static Group group(List<Perspective> people) {
        int boats = people.getFirst().size();
        int criteria = people.getFirst().weights().criteria().size();
        double[][] values = new double[boats][people.size() * criteria];
        double[][] weights = new double[people.size()][people.size() * criteria];
        boolean[][] ruledOut = new boolean[people.size()][];
        for (int p = 0; p < people.size(); p++) {
            Perspective person = people.get(p);
            ruledOut[p] = person.ruledOutFlags();
            for (int c = 0; c < criteria; c++) {
                weights[p][p * criteria + c] = person.share(c);
                for (int b = 0; b < boats; b++) {
                    values[b][p * criteria + c] = person.value(b, c);
                }
            }
        }
        return Group.of(values, weights, ruledOut);
    }
}
