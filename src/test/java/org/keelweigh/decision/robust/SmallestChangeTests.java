package org.keelweigh.decision.robust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.keelweigh.decision.AdditiveModel;
import org.keelweigh.decision.Cases;
import org.keelweigh.decision.Cases.Case;

class SmallestChangeTests {

    @Provide
    Arbitrary<Case> cases() {
        return Cases.cases();
    }

    // by hand: a leads b by 0.08; moving m from criterion 0 (a ahead 0.5) to 1 (b ahead 0.5) takes off 1.0 m
    @Test
    void movesWeightFromWhereTheWinnerIsAheadToWhereTheRivalIs() {
        double[][] values = {{0.9, 0.3, 0.5}, {0.4, 0.8, 0.6}};
        SmallestChange change =
                SmallestChange.toTie(values, new double[] {0.5, 0.3, 0.2}, 0, 1).orElseThrow();
        assertThat(change.moved()).isCloseTo(0.08, within(1e-9));
        assertThat(change.total()).isCloseTo(0.16, within(1e-9));
        assertThat(change.largest()).isCloseTo(0.08, within(1e-9));
        assertThat(change.weights().get(0)).isCloseTo(0.42, within(1e-9));
        assertThat(change.weights().get(1)).isCloseTo(0.38, within(1e-9));
        assertThat(change.changes().get(2)).isCloseTo(0, within(1e-9));
    }

    @Test
    void needsMoreToBeatAThirdThanToTieTheWinner() {
        double[][] values = {{100, 0}, {0, 90}, {20, 95}};
        double[] weights = {0.9, 0.1};
        double tie = SmallestChange.toTie(values, weights, 0, 1).orElseThrow().moved();
        assertThat(tie).isCloseTo(0.9 - 90 / 190.0, within(1e-9));
        assertThat(SmallestChange.toWin(values, weights, new boolean[3], 1)).isEmpty();
        assertThat(SmallestChange.toWin(values, weights, new boolean[] {false, false, true}, 1)
                        .orElseThrow()
                        .moved())
                .isCloseTo(tie, within(1e-9));
    }

    @Test
    void isNothingForTheWinnerAndImpossibleForTheRuledOut() {
        double[][] values = {{80, 20}, {10, 10}};
        double[] weights = {0.5, 0.5};
        assertThat(SmallestChange.toWin(values, weights, new boolean[2], 0)
                        .orElseThrow()
                        .total())
                .isZero();
        assertThat(SmallestChange.toWin(values, weights, new boolean[2], 1)).isEmpty();
        assertThat(SmallestChange.toWin(values, weights, new boolean[] {false, true}, 1))
                .isEmpty();
    }

    @Property
    void reallyPutsTheRivalFirst(@ForAll("cases") Case all) {
        for (int rival = 0; rival < all.alternatives(); rival++) {
            Optional<SmallestChange> found = SmallestChange.toWin(all.values(), all.weights(), all.ruledOut(), rival);
            if (found.isEmpty()) {
                continue;
            }
            double[] weights =
                    found.get().weights().stream().mapToDouble(w -> w).toArray();
            double[] totals = AdditiveModel.totals(all.values(), weights);
            for (int a = 0; a < totals.length; a++) {
                assertThat(all.ruledOut()[a] || totals[rival] >= totals[a] - 1e-6)
                        .isTrue();
            }
        }
    }

    // independent solution: a tie with one opponent is a fractional knapsack, filled from the criterion where the
    // opponent is most ahead, all of it moved to the criterion where the rival is most ahead
    @Property
    void agreesWithTheGreedySolutionForOneOpponent(@ForAll("cases") Case all) {
        OptionalDouble expected = greedy(all);
        Optional<SmallestChange> found = SmallestChange.toTie(all.values(), all.weights(), 0, 1);
        assertThat(found.isPresent()).isEqualTo(expected.isPresent());
        if (found.isPresent()) {
            assertThat(found.get().moved()).isCloseTo(expected.getAsDouble(), within(1e-7));
            assertThat(found.get().largest()).isLessThanOrEqualTo(found.get().moved() + 1e-12);
            double[] weights =
                    found.get().weights().stream().mapToDouble(w -> w).toArray();
            double[] totals = AdditiveModel.totals(all.values(), weights);
            double lead = totals[1] - totals[0];
            boolean wasAhead = expected.getAsDouble() == 0;
            assertThat(wasAhead ? lead >= -1e-6 : Math.abs(lead) <= 1e-6).isTrue();
        }
    }

    private static OptionalDouble greedy(Case all) {
        double[] lead = new double[all.criteria()];
        Arrays.setAll(lead, c -> all.values()[1][c] - all.values()[0][c]);
        double missing = -AdditiveModel.total(lead, all.weights());
        double most = Arrays.stream(lead).max().orElseThrow();
        double moved = 0;
        int[] order = IntStream.range(0, lead.length)
                .boxed()
                .sorted(Comparator.comparing(c -> lead[c]))
                .mapToInt(Integer::intValue)
                .toArray();
        for (int c : order) {
            if (missing > 1e-9 && lead[c] < most) {
                double share = Math.min(all.weights()[c], missing / (most - lead[c]));
                moved += share;
                missing -= share * (most - lead[c]);
            }
        }
        return missing > 1e-9 ? OptionalDouble.empty() : OptionalDouble.of(moved);
    }
}
