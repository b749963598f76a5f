package org.keelweigh.decision.robust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.keelweigh.decision.AdditiveModel;
import org.keelweigh.decision.Cases;
import org.keelweigh.decision.Cases.Case;
import org.keelweigh.decision.Weights;

class WeightStabilityTests {

    private static final double[][] TWO = {{0.9, 0.3, 0.5}, {0.4, 0.8, 0.6}};
    private static final double[] TWO_WEIGHTS = {0.5, 0.3, 0.2};

    // E. Triantaphyllou and A. Sanchez, Decision Sciences 28(1):151-194, 1997 (data from memory, scores recomputed)
    private static final double[][] FOUR = {
        {0.3088, 0.2897, 0.3867, 0.1922},
        {0.2163, 0.3458, 0.1755, 0.6288},
        {0.4509, 0.2473, 0.1194, 0.0575},
        {0.024, 0.1172, 0.3184, 0.1215}
    };
    private static final double[] FOUR_WEIGHTS = normalised(0.3277, 0.3058, 0.2876, 0.079);

    @Provide
    Arbitrary<Case> cases() {
        return Cases.cases();
    }

    // constructed and derived: t* = R / (R - d_k) = 17/42, 23/58, 5/9
    @Test
    void findsTheExactTieOfTwoAlternatives() {
        List<WeightStability> all = WeightStability.all(TWO, TWO_WEIGHTS, new boolean[2]);
        assertThat(tie(0)).isCloseTo(17 / 42.0, within(1e-12));
        assertThat(tie(1)).isCloseTo(23 / 58.0, within(1e-12));
        assertThat(tie(2)).isCloseTo(5 / 9.0, within(1e-12));
        assertThat(all.get(0).from()).isCloseTo(17 / 42.0, within(1e-12));
        assertThat(all.get(0).to()).isEqualTo(1);
        assertThat(all.get(1).from()).isZero();
        assertThat(all.get(1).to()).isCloseTo(23 / 58.0, within(1e-12));
        assertThat(all.get(0).winnerBelow()).hasValue(1);
        assertThat(all.get(0).winnerAbove()).isEmpty();
        assertThat(all.get(2).winnerAbove()).hasValue(1);
        assertThat(all.get(1).room()).isCloseTo(23 / 58.0 - 0.3, within(1e-12));
    }

    private static double tie(int criterion) {
        return WeightStability.tieWeight(TWO, TWO_WEIGHTS, criterion, 0, 1).orElseThrow();
    }

    // Triantaphyllou and Sanchez 1997: the change delta of W_k, others unchanged, then all renormalised. That is the
    // proportional rescaling of this class with t = (W_k - delta) / (1 - delta). Infeasible where delta > W_k.
    @ParameterizedTest
    @CsvSource({
        "0, 1, 0.426 -0.7024 0.1866 -0.0903, 0 1 1 1",
        "0, 2, -0.3794 1.2716 0.2017 0.4003, 1 0 1 0",
        "0, 3, 0.6015 0.9931 2.5082 2.423, 0 0 0 0",
        "1, 2, -0.0618 0.1473 0.2586 0.0254, 1 1 1 1",
        "1, 3, 0.6859 0.577 -0.923 0.26, 0 0 1 0",
        "2, 3, 0.275 0.9023 -0.5899 -1.8342, 1 0 1 1"
    })
    void reproducesTheCriticalChanges(int a, int b, String deltas, String feasible) {
        for (int k = 0; k < 4; k++) {
            OptionalDouble tie = WeightStability.tieWeight(FOUR, FOUR_WEIGHTS, k, a, b);
            if (feasible.split(" ")[k].equals("0")) {
                assertThat(tie).as("criterion %d", k).isEmpty();
            } else {
                double delta = Double.parseDouble(deltas.split(" ")[k]);
                assertThat(tie.orElseThrow())
                        .as("criterion %d", k)
                        .isCloseTo((FOUR_WEIGHTS[k] - delta) / (1 - delta), within(2e-4));
            }
        }
    }

    @Property
    void coversTheWholeRangeWithoutGaps(@ForAll("cases") Case all) {
        for (WeightStability stability : stability(all)) {
            List<Segment> segments = stability.segments();
            assertThat(segments.getFirst().from()).isZero();
            assertThat(segments.getLast().to()).isEqualTo(1);
            for (int i = 1; i < segments.size(); i++) {
                assertThat(segments.get(i).from()).isEqualTo(segments.get(i - 1).to());
                assertThat(segments.get(i).winner())
                        .isNotEqualTo(segments.get(i - 1).winner());
            }
        }
    }

    @Property
    void tiesBothWinnersAtEveryBorder(@ForAll("cases") Case all) {
        for (WeightStability stability : stability(all)) {
            for (int i = 1; i < stability.segments().size(); i++) {
                Segment left = stability.segments().get(i - 1);
                Segment right = stability.segments().get(i);
                double[] totals = totals(all, stability.criterion(), right.from());
                assertThat(totals[left.winner()]).isCloseTo(totals[right.winner()], within(1e-6));
                assertThat(totals[left.winner()]).isCloseTo(best(totals, all.ruledOut()), within(1e-6));
            }
        }
    }

    @Property
    void namesTheWinnerAtAnyWeight(@ForAll("cases") Case all, @ForAll @DoubleRange(max = 1) double weight) {
        for (WeightStability stability : stability(all)) {
            double[] totals = totals(all, stability.criterion(), weight);
            int winner = stability.segments().stream()
                    .filter(segment -> weight >= segment.from() && weight <= segment.to())
                    .findFirst()
                    .orElseThrow()
                    .winner();
            assertThat(all.ruledOut()[winner]).isFalse();
            assertThat(totals[winner]).isCloseTo(best(totals, all.ruledOut()), within(1e-6));
            boolean inside = weight >= stability.from() && weight <= stability.to();
            double lead = totals[stability.winner()] - best(totals, all.ruledOut());
            assertThat(lead)
                    .satisfies(l -> assertThat(inside ? l >= -1e-6 : l <= 1e-6).isTrue());
        }
    }

    @Property
    void holdsThePresentWeightInsideTheInterval(@ForAll("cases") Case all) {
        for (WeightStability stability : stability(all)) {
            assertThat(stability.weight()).isBetween(stability.from(), stability.to());
            assertThat(stability.room()).isBetween(0.0, 1.0);
            assertThat(stability.holdsEverywhere()).isEqualTo(stability.from() == 0 && stability.to() == 1);
        }
    }

    @Property
    void namesWhoTakesOverBeyondEachBorder(@ForAll("cases") Case all) {
        for (WeightStability stability : stability(all)) {
            int k = stability.criterion();
            assertThat(stability.winnerBelow().isPresent()).isEqualTo(stability.from() > 0);
            assertThat(stability.winnerAbove().isPresent()).isEqualTo(stability.to() < 1);
            stability.winnerBelow().ifPresent(next -> {
                double[] totals = totals(all, k, stability.from());
                assertThat(totals[next]).isCloseTo(totals[stability.winner()], within(1e-6));
            });
            stability.winnerAbove().ifPresent(next -> {
                double[] totals = totals(all, k, stability.to());
                assertThat(totals[next]).isCloseTo(totals[stability.winner()], within(1e-6));
            });
        }
    }

    private static List<WeightStability> stability(Case all) {
        return WeightStability.all(all.values(), all.weights(), all.ruledOut());
    }

    /** The long way round: move the weight, then add up. */
    private static double[] totals(Case all, int criterion, double weight) {
        if (all.criteria() == 1) {
            return AdditiveModel.totals(all.values(), all.weights());
        }
        List<String> ids =
                IntStream.range(0, all.criteria()).mapToObj(String::valueOf).toList();
        Map<String, Double> raw = new LinkedHashMap<>();
        ids.forEach(id -> raw.put(id, all.weights()[Integer.parseInt(id)]));
        return AdditiveModel.totals(
                all.values(),
                Weights.of(raw).with(String.valueOf(criterion), weight).toArray());
    }

    private static double best(double[] totals, boolean[] ruledOut) {
        double best = Double.NEGATIVE_INFINITY;
        for (int a = 0; a < totals.length; a++) {
            best = ruledOut[a] ? best : Math.max(best, totals[a]);
        }
        return best;
    }

    private static double[] normalised(double... raw) {
        double sum = Arrays.stream(raw).sum();
        return Arrays.stream(raw).map(w -> w / sum).toArray();
    }

    @Test
    void keepsThePresentWinnerWhereACopyTiesWithIt() {
        double[][] values = {{0, 10}, {50, 50}, {50, 50}};
        boolean[] first = {false, true, false};
        WeightStability stability =
                WeightStability.all(values, new double[] {0.5, 0.5}, first).getFirst();
        assertThat(stability.segments()).containsExactly(new Segment(0, 1, 2));
        assertThat(stability.holdsEverywhere()).isTrue();
        assertThat(stability.winnerBelow()).isEmpty();
        assertThat(stability.room()).isEqualTo(1);
    }

    @Test
    void saysNothingWhenAllAreRuledOut() {
        assertThat(WeightStability.all(TWO, TWO_WEIGHTS, new boolean[] {true, true}))
                .isEmpty();
        assertThat(UpperEnvelope.segments(
                        new double[] {1}, new double[] {2}, new boolean[] {true}, UpperEnvelope.NONE_PREFERRED))
                .isEmpty();
    }

    @Test
    void rejectsIndexesThatAreNotThere() {
        assertThatIllegalArgumentException().isThrownBy(() -> WeightStability.tieWeight(TWO, TWO_WEIGHTS, 3, 0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> WeightStability.tieWeight(TWO, TWO_WEIGHTS, 0, 0, 2));
    }
}
