package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.keelweigh.decision.Difference;
import org.keelweigh.decision.opinion.Agreement;
import org.keelweigh.decision.opinion.Opinion;
import org.keelweigh.decision.opinion.PreferenceFunction;
import org.keelweigh.decision.opinion.PrometheeTwo;
import org.keelweigh.decision.opinion.Topsis;
import org.keelweigh.decision.opinion.WeightedProduct;

/**
 * What other methods say to the same points and weights. They never decide: each can reorder boats when one joins the list.
 * Boats that are ruled out are left out, because they would shift what the others are compared with.
 */
public final class SecondOpinions {

    private static final double INDIFFERENT_POINTS = 5;
    private static final double CLEAR_POINTS = 25;

    /** A boat without a single point on one criterion would lose everything by the product, so points count from 1. */
    private static final double LEAST_POINTS = 1;

    /**
     * What one method says.
     *
     * @param method its name with the variant
     * @param how how it looks at the boats, as a sentence
     * @param order the boats it compared, first to last
     * @param sameLeader whether it puts the same boat first
     * @param agreement Kendall's rank correlation with the ranking by value, −1 to 1; empty where it ties everything
     * @param sentence whether it agrees and, if not, why, as a sentence
     */
    public record Voice(
            String method,
            String how,
            List<Integer> order,
            boolean sameLeader,
            OptionalDouble agreement,
            String sentence) {

        public Voice {
            order = List.copyOf(order);
        }
    }

    private final Measured measured;
    private final Perspective perspective;
    private final List<Integer> boats;
    private final double[][] points;
    private final double[] weights;

    private SecondOpinions(Measured measured, Perspective perspective) {
        this.measured = measured;
        this.perspective = perspective;
        boats = perspective.ranking().order().stream()
                .filter(boat -> !perspective.ruledOut(boat))
                .toList();
        points = boats.stream().map(boat -> perspective.valueTable()[boat]).toArray(double[][]::new);
        weights = perspective.weights().toArray();
    }

    /** Asks three other methods; none of them when fewer than two boats are left to choose from. */
    public static List<Voice> of(Measured measured, Perspective perspective) {
        SecondOpinions opinions = new SecondOpinions(measured, perspective);
        return opinions.boats.size() < 2 ? List.of() : opinions.voices();
    }

    private List<Voice> voices() {
        boolean[] more = new boolean[weights.length];
        Arrays.fill(more, true);
        return List.of(
                voice(
                        Topsis.of(points, weights, more).opinion(),
                        "TOPSIS (vector normalisation, on points)",
                        "It asks which boat is nearest to an ideal one made of the best mark on each criterion; distances are squared, so one poor mark counts more than several small ones."),
                voice(
                        PrometheeTwo.of(points, weights, more, preferences()).opinion(),
                        "PROMETHEE II (straight preference from 5 to 25 points)",
                        "It compares the boats two by two and counts how clearly each is preferred; leads under 5 points do not count, leads over 25 count no more than 25."),
                voice(
                        WeightedProduct.of(lifted(), weights, more),
                        "Weighted product (points counted from 1 up)",
                        "It multiplies the marks instead of adding them, so a very poor mark is hard to make up for."));
    }

    private List<PreferenceFunction> preferences() {
        return Collections.nCopies(weights.length, new PreferenceFunction.Linear(INDIFFERENT_POINTS, CLEAR_POINTS));
    }

    private double[][] lifted() {
        return Arrays.stream(points)
                .map(row -> Arrays.stream(row)
                        .map(each -> Math.max(LEAST_POINTS, each))
                        .toArray())
                .toArray(double[][]::new);
    }

    private Voice voice(Opinion opinion, String method, String how) {
        List<Integer> order =
                new ArrayList<>(IntStream.range(0, boats.size()).boxed().toList());
        order.sort((a, b) ->
                Integer.compare(opinion.ranks().get(a), opinion.ranks().get(b)));
        List<Integer> ours =
                boats.stream().map(boat -> perspective.ranking().rank(boat)).toList();
        Agreement agreement = Agreement.between(ours, opinion.ranks());
        int first = boats.get(order.getFirst());
        return new Voice(
                method,
                how,
                order.stream().map(boats::get).toList(),
                agreement.sameLeader(),
                agreement.tauB(),
                agreement.sameLeader() ? agrees(agreement) : differs(first));
    }

    private String agrees(Agreement agreement) {
        String leader = name(boats.getFirst());
        boolean whole = agreement.tauB().isPresent() && agreement.tauB().getAsDouble() >= 1 - 1e-9;
        return whole
                ? "Agrees: " + leader + " first, and the same order after it."
                : "Agrees that " + leader + " comes first; the order after it differs.";
    }

    private String differs(int first) {
        int leader = boats.getFirst();
        Difference difference = perspective.difference(first, leader);
        String because = difference.pros().stream()
                .findFirst()
                .map(part -> ": it makes more of " + lower(criterion(part.criterion())) + ", where " + name(leader)
                        + " has " + Math.round(perspective.value(leader, part.criterion())) + " of 100 points and "
                        + name(first) + " " + Math.round(perspective.value(first, part.criterion())))
                .orElse("");
        return "Differs: it would put " + name(first) + " before " + name(leader) + because + ".";
    }

    private String criterion(int column) {
        return measured.yardsticks().all().get(column).name();
    }

    private String name(int boat) {
        return measured.boats().get(boat).name();
    }

    private static String lower(String name) {
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }
}
