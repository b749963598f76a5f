package org.keelweigh.decision.weight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class RankOrderTests {

    // sources in the file's header
    @ParameterizedTest
    @CsvFileSource(resources = "/oracle/rank-order-weights.csv", numLinesToSkip = 5)
    void reproducesThePublishedTables(RankOrder scheme, int n, String expected) {
        double[] printed = Arrays.stream(expected.split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        assertThat(printed).hasSize(n);
        assertThat(scheme.shares(n)).containsExactly(printed, within(5.1e-5));
    }

    // exact fractions of the centroid, derived from its formula
    @Test
    void isExactForTheCentroid() {
        assertThat(RankOrder.CENTROID.shares(4))
                .containsExactly(new double[] {25 / 48.0, 13 / 48.0, 7 / 48.0, 1 / 16.0}, within(1e-15));
        assertThat(RankOrder.CENTROID.shares(5))
                .containsExactly(new double[] {137 / 300.0, 77 / 300.0, 47 / 300.0, 0.09, 0.04}, within(1e-15));
    }

    @Property
    void keepsTheOrderAndSumsToOne(@ForAll RankOrder scheme, @ForAll @IntRange(min = 1, max = 30) int n) {
        double[] shares = scheme.shares(n);
        assertThat(Arrays.stream(shares).sum()).isCloseTo(1, within(1e-12));
        for (int i = 1; i < n; i++) {
            assertThat(shares[i]).isLessThan(shares[i - 1]).isPositive();
        }
    }

    @Test
    void givesTiedCriteriaTheMeanOfTheirRanks() {
        assertThat(RankOrder.SUM
                        .weightsOfGroups(List.of(List.of("a"), List.of("b", "c")))
                        .toArray())
                .containsExactly(new double[] {0.5, 0.25, 0.25}, within(1e-15));
        assertThat(RankOrder.CENTROID
                        .weightsOfGroups(List.of(List.of("a", "b", "c")))
                        .toArray())
                .containsExactly(new double[] {1 / 3.0, 1 / 3.0, 1 / 3.0}, within(1e-15));
        assertThat(RankOrder.CENTROID.weights(List.of("x", "y")).share("x")).isCloseTo(0.75, within(1e-15));
    }

    @Test
    void rejectsAnEmptyOrderAndACriterionNamedTwice() {
        assertThatIllegalArgumentException().isThrownBy(() -> RankOrder.CENTROID.weights(List.of()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RankOrder.SUM.weights(List.of("a", "b", "a")))
                .withMessageContaining("'a' stands twice");
    }
}
