package org.keelweigh.decision.acceptability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Shares and central weights against exact areas on the simplex, worked out by geometry for these tests (method: R.
 * Lahdelma &amp; P. Salminen 2001). With 8 shifts of 8 192 Sobol points the standard error is below 5e-4 throughout, so
 * 2e-3 is more than four of them.
 */
class AcceptabilityGeometryTests {

    private static final double TOLERANCE = 2e-3;

    private static WeightBank bank(int criteria) {
        return WeightBank.lowDiscrepancy(3, criteria, 8_192, 8);
    }

    private static Acceptability uniform(double[][] values) {
        int criteria = values[0].length;
        return AcceptabilityAnalysis.of(Futures.certain(values))
                .analyse(new WeightSampler.Uniform(criteria).sample(bank(criteria)));
    }

    /** A beats B when w1 > 4/9. */
    @Test
    void findsTheCutOfTwoCriteria() {
        Acceptability result = uniform(new double[][] {{0.9, 0.2}, {0.4, 0.6}});
        assertThat(result.chanceBest(0)).isCloseTo(5.0 / 9, within(TOLERANCE));
        assertThat(result.winningChance(0, 1).orElseThrow()).isCloseTo(5.0 / 9, within(TOLERANCE));
        assertThat(result.centralWeights(0).orElseThrow()[0]).isCloseTo(13.0 / 18, within(TOLERANCE));
        assertThat(result.centralWeights(1).orElseThrow()[0]).isCloseTo(2.0 / 9, within(TOLERANCE));
    }

    @Test
    void findsTheRanksOfACompromise() {
        Acceptability result = uniform(new double[][] {{1, 0}, {0, 1}, {0.6, 0.6}});
        assertRanks(result, 0, 0.4, 0.1, 0.5);
        assertRanks(result, 1, 0.4, 0.1, 0.5);
        assertRanks(result, 2, 0.2, 0.8, 0);
        assertThat(result.centralWeights(0).orElseThrow()[0]).isCloseTo(0.8, within(TOLERANCE));
        assertThat(result.centralWeights(2).orElseThrow()[0]).isCloseTo(0.5, within(TOLERANCE));
        assertThat(result.expectedRank(2).orElseThrow()).isCloseTo(1.8, within(TOLERANCE));
    }

    @Test
    void treatsThreeSpecialistsAlike() {
        Acceptability result = uniform(new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}});
        for (int a = 0; a < 3; a++) {
            assertRanks(result, a, 1.0 / 3, 1.0 / 3, 1.0 / 3);
        }
        assertThat(result.centralWeights(0).orElseThrow())
                .containsExactly(new double[] {11.0 / 18, 7.0 / 36, 7.0 / 36}, within(TOLERANCE));
    }

    /** A flat alternative among specialists is first with (3c−1)² up to c = 1/2, then with 1 − 3(1−c)². */
    @ParameterizedTest
    @CsvSource({"0.4, 0.04, 0.84, 0.12, 0.32", "0.5, 0.25, 0.75, 0, 0.25", "0.6, 0.52, 0.48, 0, 0.16"})
    void placesAFlatAlternative(double flat, double first, double second, double third, double specialist) {
        Acceptability result = uniform(new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {flat, flat, flat}});
        assertRanks(result, 3, first, second, third, 0);
        assertThat(result.chanceBest(0)).isCloseTo(specialist, within(TOLERANCE));
    }

    /** One advantage p against disadvantages q_j: share Π p/(p+q_j). */
    @ParameterizedTest
    @CsvSource({"2 -1 -3, 0.266667", "1 -1 -1, 0.25", "3 -1 -2 -6, 0.15", "1 -1, 0.5"})
    void measuresTheCornerOfOneAdvantage(String differences, double share) {
        double[] d = numbers(differences);
        Acceptability result = uniform(new double[][] {d, new double[d.length]});
        assertThat(result.chanceBest(0)).isCloseTo(share, within(TOLERANCE));
    }

    @Test
    void findsTheCentreOfACorner() {
        Acceptability result = uniform(new double[][] {{3, -1, -2, -6}, {0, 0, 0, 0}});
        assertThat(result.centralWeights(0).orElseThrow())
                .containsExactly(new double[] {0.579167, 0.1875, 0.15, 0.083333}, within(TOLERANCE));
    }

    /** Known order w1 >= w2 >= w3; the first case wins for every such weight because all partial sums are >= 0. */
    @ParameterizedTest
    @CsvSource({"0.3 -0.2 -0.1, 1", "-0.1 0.3 -0.1, 0.625", "0.2 -0.5 0.4, 0.649351"})
    void respectsAKnownOrder(String differences, double share) {
        double[] d = numbers(differences);
        Acceptability result = AcceptabilityAnalysis.of(Futures.certain(new double[][] {d, {0, 0, 0}}))
                .analyse(WeightSampler.OrderOnly.of(List.of(0, 1, 2)).sample(bank(3)));
        // The first difference is zero on an edge of the region: rounding may turn a few samples there
        assertThat(result.chanceBest(0)).isCloseTo(share, within(TOLERANCE));
    }

    /** A = (1, 0) against B = (0, u), u uniform: A is first with ln 2. The 65 536 draws have a standard error of 1.8e-3. */
    @Test
    void joinsUncertainValuesWithUncertainWeights() {
        int samples = 65_536;
        double[] u = new SplittableRandom(5).doubles(samples).toArray();
        Futures futures = Futures.builder(2, 2, samples)
                .certain(0, 0, 1)
                .certain(0, 1, 0)
                .certain(1, 0, 0)
                .sampled(1, 1, u)
                .build();
        Acceptability result = AcceptabilityAnalysis.of(futures)
                .analyse(new WeightSampler.Uniform(2).sample(WeightBank.random(8, 2, samples)));
        assertThat(result.chanceBest(0)).isCloseTo(Math.log(2), within(4 * result.rankShareError(0, 0)));
        assertThat(result.rankShareError(0, 0)).isCloseTo(1.8e-3, within(1e-4));
        assertThat(result.centralWeights(0).orElseThrow()[0]).isCloseTo(0.639326, within(4e-3));
    }

    private static void assertRanks(Acceptability result, int alternative, double... shares) {
        for (int r = 0; r < shares.length; r++) {
            assertThat(result.rankShare(alternative, r)).isCloseTo(shares[r], within(TOLERANCE));
        }
    }

    private static double[] numbers(String text) {
        return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }
}
