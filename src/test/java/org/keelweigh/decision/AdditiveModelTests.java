package org.keelweigh.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.keelweigh.decision.Cases.Case;

class AdditiveModelTests {

    @Provide
    Arbitrary<Case> cases() {
        return Cases.cases();
    }

    @Provide
    Arbitrary<Case> positive() {
        return Cases.positive();
    }

    // oracle/offices.csv
    @Test
    void valuesTheSevenOffices() {
        assertThat(AdditiveModel.totals(Offices.values(), Offices.WEIGHTS))
                .containsExactly(Offices.totals(), within(1e-9));
    }

    @Test
    void ranksTheSevenOffices() {
        Ranking ranking = AdditiveModel.rank(Offices.values(), Offices.WEIGHTS, new boolean[7]);
        assertThat(ranking.order()).containsExactly(0, 4, 6, 3, 2, 1, 5);
        assertThat(ranking.leader()).hasValue(Offices.ADDISON);
        assertThat(ranking.runnerUp()).hasValue(Offices.ELTON);
        assertThat(ranking.margin().getAsDouble()).isCloseTo(16.0, within(1e-9));
        assertThat(ranking.contribution(Offices.ADDISON, 2)).isCloseTo(23, within(1e-9));
    }

    // constructed: scaling each column to the smallest and largest entry of the set at hand, with equal weights, gives
    // .5 .477778 .5, and a fourth alternative moves them to .5 .327778 .125 .5; fixed ranges do not move
    @Test
    void keepsScoresThatMinMaxScalingWouldMove() {
        double[] half = {0.5, 0.5};
        ValueFunction fixed = ValueFunction.linear(0, 20);
        double[][] values = Arrays.stream(new double[][] {{9, 0}, {5, 2}, {0, 5}, {0, 20}})
                .map(row -> Arrays.stream(row).map(fixed::value).toArray())
                .toArray(double[][]::new);
        double[] three = AdditiveModel.totals(Arrays.copyOf(values, 3), half);
        assertThat(AdditiveModel.totals(values, half)).startsWith(three);
        assertThat(three).containsExactly(new double[] {22.5, 17.5, 12.5}, within(1e-12));
    }

    @Property
    void neverReordersTheOthersWhenOneIsAdded(@ForAll("cases") Case all) {
        int kept = all.alternatives() - 1;
        Ranking before = AdditiveModel.rank(
                Arrays.copyOf(all.values(), kept), all.weights(), Arrays.copyOf(all.ruledOut(), kept));
        Ranking after = rank(all);
        for (int a = 0; a < kept; a++) {
            for (int b = 0; b < kept; b++) {
                assertThat(Integer.signum(after.rank(a) - after.rank(b)))
                        .isEqualTo(Integer.signum(before.rank(a) - before.rank(b)));
            }
        }
    }

    @Property
    void givesTheSameRanksInWhateverOrderTheAlternativesCome(@ForAll("cases") Case all) {
        List<double[]> rows = Arrays.asList(all.values().clone());
        Collections.reverse(rows);
        boolean[] flags = new boolean[rows.size()];
        for (int a = 0; a < flags.length; a++) {
            flags[a] = all.ruledOut()[flags.length - 1 - a];
        }
        Ranking reversed = AdditiveModel.rank(rows.toArray(double[][]::new), all.weights(), flags);
        for (int a = 0; a < flags.length; a++) {
            assertThat(reversed.rank(flags.length - 1 - a)).isEqualTo(rank(all).rank(a));
        }
    }

    @Property
    void ranksTheSameAfterACommonChangeOfScale(
            @ForAll("cases") Case all,
            @ForAll @DoubleRange(min = 0.1, max = 1) double factor,
            @ForAll @DoubleRange(min = 0, max = 10) double shift) {
        double[][] changed = new double[all.alternatives()][all.criteria()];
        for (int a = 0; a < changed.length; a++) {
            for (int c = 0; c < all.criteria(); c++) {
                changed[a][c] = all.values()[a][c] * factor + shift;
            }
        }
        assertThat(AdditiveModel.rank(changed, all.weights(), all.ruledOut()).order())
                .isEqualTo(rank(all).order());
    }

    @Property
    void neverRanksWorseWhatGotBetter(@ForAll("cases") Case all, @ForAll @IntRange(max = 5) int column) {
        double[][] improved = Arrays.stream(all.values()).map(double[]::clone).toArray(double[][]::new);
        improved[0][column % all.criteria()] = 100;
        assertThat(AdditiveModel.rank(improved, all.weights(), all.ruledOut()).rank(0))
                .isLessThanOrEqualTo(rank(all).rank(0));
    }

    @Property
    void neverPutsADominatedAlternativeFirst(@ForAll("positive") Case all) {
        Dominance dominance = Dominance.of(all.values(), all.ruledOut());
        assertThat(rank(all).first()).allMatch(a -> dominance.dominators(a).isEmpty());
    }

    @Property
    void putsRuledOutAlternativesBehindAllOthers(@ForAll("cases") Case all) {
        Ranking ranking = rank(all);
        for (int a = 0; a < all.alternatives(); a++) {
            for (int b = 0; b < all.alternatives(); b++) {
                if (all.ruledOut()[a] && !all.ruledOut()[b]) {
                    assertThat(ranking.rank(a)).isGreaterThan(ranking.rank(b));
                }
            }
        }
        assertThat(ranking.first()).noneMatch(a -> all.ruledOut()[a]);
    }

    @Property
    void addsContributionsUpToTheTotal(@ForAll("cases") Case all) {
        Ranking ranking = rank(all);
        double sum = 0;
        for (int c = 0; c < all.criteria(); c++) {
            sum += ranking.contribution(0, c);
        }
        assertThat(sum).isCloseTo(ranking.total(0), within(1e-12));
    }

    private static Ranking rank(Case all) {
        return AdditiveModel.rank(all.values(), all.weights(), all.ruledOut());
    }

    @Test
    void sharesRanksAndLeavesAGapBehindThem() {
        double[][] values = {{10}, {30}, {30}, {90}, {30}};
        Ranking ranking =
                AdditiveModel.rank(values, new double[] {1}, new boolean[] {false, false, false, true, false});
        assertThat(ranking.order()).containsExactly(1, 2, 4, 0, 3);
        assertThat(ranking.first()).containsExactly(1, 2, 4);
        assertThat(ranking.rank(0)).isEqualTo(4);
        assertThat(ranking.rank(3)).isEqualTo(5);
        assertThat(ranking.margin()).hasValue(0);
    }

    @Test
    void hasNoLeaderWhenAllAreRuledOut() {
        Ranking ranking = AdditiveModel.rank(new double[][] {{1}, {2}}, new double[] {1}, new boolean[] {true, true});
        assertThat(ranking.leader()).isEmpty();
        assertThat(ranking.runnerUp()).isEmpty();
        assertThat(ranking.margin()).isEmpty();
        assertThat(ranking.order()).containsExactly(1, 0);
        assertThat(ranking.ruledOut(0)).isTrue();
    }

    @Test
    void takesRoundingForATie() {
        // 0.1 + 0.2 is not 0.3 in binary
        assertThat(Ranks.competition(new double[] {0.3, 0.1 + 0.2, 0.2})).containsExactly(1, 1, 3);
        assertThat(Ranks.competition(new double[] {Double.NEGATIVE_INFINITY, 1, Double.NEGATIVE_INFINITY}))
                .containsExactly(2, 1, 2);
    }

    @Test
    void rejectsTablesThatDoNotFit() {
        double[] half = {0.5, 0.5};
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AdditiveModel.totals(new double[][] {{1, 2}, {3}}, half))
                .withMessageContaining("Row 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AdditiveModel.totals(new double[][] {{1, Double.NaN}}, half))
                .withMessageContaining("column 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AdditiveModel.totals(new double[][] {{1, 2}}, new double[] {0.5, 0.4}))
                .withMessageContaining("0.9");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AdditiveModel.totals(new double[][] {{1, 2}}, new double[] {1.5, -0.5}))
                .withMessageContaining("-0.5");
        assertThatIllegalArgumentException().isThrownBy(() -> AdditiveModel.totals(new double[0][], half));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AdditiveModel.rank(new double[][] {{1, 2}}, half, new boolean[2]))
                .withMessageContaining("2 ruled-out flags");
    }
}
