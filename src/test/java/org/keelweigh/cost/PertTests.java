package org.keelweigh.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PertTests {

    /** Estimates and rule after Malcolm and others, Operations Research 7(5), 1959; chain 17.83 with sigma 1.69. */
    @Test
    void addsUpTheChain() {
        double[][] chain = {{2, 3, 5}, {5, 8, 14}, {3, 4, 6}, {1, 2, 3}};
        double mean = 0;
        double variance = 0;
        for (double[] each : chain) {
            Pert pert = Pert.of(each[0], each[1], each[2]);
            mean += pert.mean();
            variance += pert.ruleOfThumbVariance();
        }
        assertThat(mean).isCloseTo(17.833333, within(1e-6));
        assertThat(Math.sqrt(variance)).isCloseTo(1.691482, within(1e-6));
    }

    /** A list of seven activities, means and variances to two decimals (from memory, recomputed). */
    @ParameterizedTest
    @CsvSource({
        "2, 4, 6, 4.0, 0.4444",
        "3, 5, 9, 5.33, 1",
        "4, 5, 7, 5.17, 0.25",
        "4, 6, 10, 6.33, 1",
        "3, 4, 8, 4.5, 0.6944",
        "3, 5, 8, 5.17, 0.6944"
    })
    void givesTheActivityList(double low, double likely, double high, double mean, double variance) {
        assertThat(Pert.of(low, likely, high).mean()).isCloseTo(mean, within(0.005));
        assertThat(Pert.of(low, likely, high).ruleOfThumbVariance()).isCloseTo(variance, within(0.005));
    }

    /** Moments of the beta by its textbook formula: they differ from the PERT rule of thumb. */
    @ParameterizedTest
    @CsvSource({
        "5, 8, 14, 8.5, 2.333333, 3.666667, 2.75, 2.25",
        "2, 5, 14, 6, 2, 4, 4.571429, 4",
        "100, 200, 600, 250, 1.8, 4.2, 7500, 6944.444444"
    })
    void hasTheVarianceOfItsBeta(
            double a, double m, double b, double mean, double alpha, double beta, double variance, double rule) {
        Pert pert = Pert.of(a, m, b);
        assertThat(pert.mean()).isCloseTo(mean, within(1e-6));
        assertThat(pert.alpha()).isCloseTo(alpha, within(1e-6));
        assertThat(pert.beta()).isCloseTo(beta, within(1e-6));
        assertThat(pert.variance()).isCloseTo(variance, within(1e-6));
        assertThat(pert.ruleOfThumbVariance()).isCloseTo(rule, within(1e-6));
    }

    @Property(tries = 200)
    void readsTheSameQuantileFromTheTable(
            @ForAll @DoubleRange(min = 0, max = 1) double mode, @ForAll @DoubleRange(min = 0, max = 1) double p) {
        Pert pert = Pert.of(0, mode, 1);
        assertThat(pert.table().quantile(p)).isCloseTo(pert.quantile(p), within(5e-5));
    }

    @ParameterizedTest
    @CsvSource({"100, 200, 600", "0, 0, 1", "0, 1, 1", "5, 8, 14"})
    void hasTheSameMomentsInTheTable(double a, double m, double b) {
        Pert pert = Pert.of(a, m, b);
        PertTable table = pert.table();
        int n = 20_000;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double x = table.quantile((i + 0.5) / n) - pert.mean();
            sum += x;
            squares += x * x;
        }
        double scale = b - a;
        assertThat(sum / n).isCloseTo(0, within(1e-4 * scale));
        assertThat(squares / n).isCloseTo(pert.variance(), within(1e-4 * scale * scale));
    }

    @Test
    void reachesBothEnds() {
        PertTable table = Pert.of(100, 200, 600).table();
        assertThat(table.quantile(0)).isEqualTo(100);
        assertThat(table.quantile(1)).isCloseTo(600, within(1e-9));
        assertThat(Pert.of(7, 7, 7).table().quantile(0.3)).isEqualTo(7);
        assertThat(Pert.of(7, 7, 7).quantile(0.3)).isEqualTo(7);
    }

    @Test
    void refusesWhatIsNoChance() {
        assertThatIllegalArgumentException().isThrownBy(() -> Pert.of(0, 1, 2).quantile(1.5));
    }
}
