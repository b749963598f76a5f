package org.keelweigh.decision.weight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.keelweigh.decision.Ranks;

class PairwiseComparisonTests {

    // sources in the file's header
    @ParameterizedTest
    @CsvFileSource(resources = "/oracle/pairwise-comparison.csv", numLinesToSkip = 6)
    void reproducesSaatysMatrices(
            String name,
            String upper,
            String eigenvector,
            double lambda,
            double ci,
            double cr,
            String geometric,
            String printed) {
        PairwiseComparison comparison = PairwiseComparison.ofUpper(rows(upper));
        assertThat(comparison.priorities()).as(name).containsExactly(numbers(eigenvector), within(1e-4));
        assertThat(comparison.priorities()).containsExactly(numbers(printed), within(0.011));
        assertThat(comparison.geometricMeans()).containsExactly(numbers(geometric), within(1e-4));
        PairwiseComparison.Consistency consistency = comparison.consistency(RandomIndex.SAATY_1980);
        assertThat(consistency.lambdaMax()).isCloseTo(lambda, within(1e-4));
        assertThat(consistency.index()).isCloseTo(ci, within(1e-4));
        assertThat(consistency.ratio()).isCloseTo(cr, within(1e-4));
        assertThat(consistency.table()).isEqualTo("Saaty 1980");
    }

    // the house matrix has CR .169, and its two kinds of priorities order the criteria differently (recomputed)
    @Test
    void showsThatInconsistentJudgementsDependOnTheMethod() {
        PairwiseComparison house = PairwiseComparison.ofUpper(
                rows("5 3 7 6 6 1/3 1/4|1/3 5 3 3 1/5 1/7|6 3 4 6 1/5|1/3 1/4 1/7 1/8|1/2 1/5 1/6|1/5 1/6|1/2"));
        assertThat(Ranks.competition(house.priorities())).containsExactly(3, 5, 2, 8, 7, 6, 4, 1);
        assertThat(Ranks.competition(house.geometricMeans())).containsExactly(2, 5, 4, 8, 7, 6, 3, 1);
    }

    // for n = 3: x = (a12 a23 / a13)^(1/3), lambda = 1 + x + 1/x, eigenvector = row geometric means (derived)
    @ParameterizedTest
    @CsvSource({
        "2, 6, 3, 3.0,         0.0,      0.6      0.3      0.1",
        "3, 5, 3, 3.038511091, 0.033199, 0.636986 0.258285 0.104729",
        "2, 8, 2, 3.053621576, 0.046225, 0.64336  0.255317 0.101323",
        "9, 9, 9, 3.56083368,  0.483477, 0.778491 0.179925 0.041584"
    })
    void isExactForThreeCriteria(double a12, double a13, double a23, double lambda, double cr, String weights) {
        PairwiseComparison comparison = PairwiseComparison.ofUpper(new double[][] {{a12, a13}, {a23}});
        assertThat(comparison.priorities()).containsExactly(numbers(weights), within(1e-6));
        assertThat(comparison.geometricMeans()).containsExactly(numbers(weights), within(1e-6));
        assertThat(comparison.consistency(RandomIndex.SAATY_1980).lambdaMax()).isCloseTo(lambda, within(1e-8));
        assertThat(comparison.consistency(RandomIndex.SAATY_1980).ratio()).isCloseTo(cr, within(1e-6));
    }

    @Property
    void recoversConsistentPriorities(
            @ForAll @DoubleRange(min = 0.2, max = 5) double a, @ForAll @DoubleRange(min = 0.2, max = 5) double b) {
        double[] stated = {1, a, b, a * b};
        double[][] matrix = new double[4][4];
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                matrix[i][j] = stated[i] / stated[j];
            }
        }
        PairwiseComparison comparison = PairwiseComparison.of(matrix);
        double sum = Arrays.stream(stated).sum();
        for (int i = 0; i < 4; i++) {
            assertThat(comparison.priorities()[i]).isCloseTo(stated[i] / sum, within(1e-9));
        }
        assertThat(comparison.consistency(RandomIndex.SAATY_1980).ratio()).isCloseTo(0, within(1e-9));
    }

    // T.L. Saaty's group rule; J. Aczel and T.L. Saaty, Journal of Mathematical Psychology 27:93-102, 1983 (from
    // memory)
    @Test
    void mergesPeopleByTheGeometricMean() {
        PairwiseComparison one = PairwiseComparison.ofUpper(new double[][] {{2, 6}, {3}});
        PairwiseComparison other = PairwiseComparison.ofUpper(new double[][] {{0.5, 2}, {4}});
        assertThat(PairwiseComparison.together(List.of(one, other)).priorities())
                .containsExactly(new double[] {0.436934, 0.436934, 0.126132}, within(1e-6));
        PairwiseComparison three = PairwiseComparison.ofUpper(new double[][] {{3}});
        PairwiseComparison third = PairwiseComparison.ofUpper(new double[][] {{1 / 3.0}});
        assertThat(PairwiseComparison.together(List.of(three, third)).priorities())
                .containsExactly(new double[] {0.5, 0.5}, within(1e-12));
    }

    @Test
    void pointsAtTheJudgementThatFitsWorst() {
        // a is twice b, b twice c, c twice d, yet d three times a
        PairwiseComparison comparison = PairwiseComparison.ofUpper(new double[][] {{2, 4, 1 / 3.0}, {2, 4}, {2}});
        PairwiseComparison.Contradiction worst = comparison.worstJudgement();
        assertThat(worst.first()).isZero();
        assertThat(worst.second()).isEqualTo(3);
        assertThat(worst.stated()).isCloseTo(1 / 3.0, within(1e-12));
        assertThat(worst.implied()).isGreaterThan(1);
    }

    @Test
    void namesItsCriteria() {
        PairwiseComparison comparison = PairwiseComparison.ofUpper(new double[][] {{3}});
        assertThat(comparison.weights(List.of("a", "b")).share("a")).isCloseTo(0.75, within(1e-12));
        assertThat(comparison.consistency(RandomIndex.SAATY_1980).ratio()).isZero();
        assertThatIllegalArgumentException().isThrownBy(() -> comparison.weights(List.of("a")));
    }

    @Test
    void rejectsWhatIsNoReciprocalMatrix() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PairwiseComparison.of(new double[][] {{1, 3}, {3, 1}}))
                .withMessageContaining("reciprocal");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PairwiseComparison.of(new double[][] {{1, 3, 1}, {1 / 3.0, 1, 1}}))
                .withMessageContaining("square");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PairwiseComparison.of(new double[][] {{1, -3}, {-1 / 3.0, 1}}))
                .withMessageContaining("-3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PairwiseComparison.ofUpper(new double[][] {{1}, {1}}))
                .withMessageContaining("Row 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RandomIndex.SAATY_1980.of(16))
                .withMessageContaining("1 to 15");
        assertThatIllegalArgumentException().isThrownBy(() -> PairwiseComparison.together(List.of()));
    }

    private static double[][] rows(String upper) {
        return Arrays.stream(upper.split("\\|"))
                .map(PairwiseComparisonTests::numbers)
                .toArray(double[][]::new);
    }

    private static double[] numbers(String text) {
        return Arrays.stream(text.trim().split(" +"))
                .mapToDouble(PairwiseComparisonTests::number)
                .toArray();
    }

    private static double number(String text) {
        return text.startsWith("1/") ? 1 / Double.parseDouble(text.substring(2)) : Double.parseDouble(text);
    }
}
