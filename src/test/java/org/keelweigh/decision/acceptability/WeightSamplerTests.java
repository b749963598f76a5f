package org.keelweigh.decision.acceptability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WeightSamplerTests {

    private static final int SAMPLES = 40_000;

    private static WeightBank bank(int criteria) {
        return WeightBank.random(21, criteria, SAMPLES);
    }

    private static double[] spread(WeightSample sample) {
        double[] mean = sample.mean();
        double[] spread = new double[mean.length];
        for (int c = 0; c < mean.length; c++) {
            for (int s = 0; s < sample.samples(); s++) {
                spread[c] += Math.pow(sample.weight(c, s) - mean[c], 2) / sample.samples();
            }
            spread[c] = Math.sqrt(spread[c]);
        }
        return spread;
    }

    @Property(tries = 30)
    void drawsWeightsThatAddUpToOne(
            @ForAll @LongRange(min = 0, max = 1000) long seed,
            @ForAll @DoubleRange(min = 0.5, max = 5_000) double concentration) {
        WeightBank bank = WeightBank.random(seed, 4, 600);
        List<WeightSampler> samplers = List.of(
                new WeightSampler.Fixed(List.of(4.0, 3.0, 0.0, 1.0)),
                new WeightSampler.Uniform(4),
                new WeightSampler.Uniform(List.of(0.1, 0.0, 0.5, 0.2)),
                new WeightSampler.AroundStated(List.of(0.5, 0.3, 0.0, 0.2), concentration),
                new WeightSampler.OrderOnly(List.of(List.of(2), List.of(0, 3), List.of(1)), 0.05));
        for (WeightSampler sampler : samplers) {
            WeightSample sample = sampler.sample(bank);
            for (int s = 0; s < 600; s++) {
                double sum = 0;
                for (double w : sample.weights(s)) {
                    assertThat(w).isBetween(0.0, 1.0);
                    sum += w;
                }
                assertThat(sum).isCloseTo(1, within(1e-6));
            }
        }
    }

    /** A uniform weight of 4 has mean 1/4 and sd √(3/80). */
    @Test
    void drawsUniformlyOnTheSimplex() {
        WeightSample sample = new WeightSampler.Uniform(4).sample(bank(4));
        double sd = Math.sqrt(3.0 / 80);
        assertThat(sample.mean()).containsExactly(new double[] {0.25, 0.25, 0.25, 0.25}, within(4 * sd / 200));
        assertThat(spread(sample)).containsExactly(new double[] {sd, sd, sd, sd}, within(3e-3));
    }

    @Test
    void keepsLowerBounds() {
        WeightSample sample = new WeightSampler.Uniform(List.of(0.4, 0.1, 0.0)).sample(bank(3));
        assertThat(sample.mean()).containsExactly(new double[] {0.4 + 0.5 / 3, 0.1 + 0.5 / 3, 0.5 / 3}, within(3e-3));
        for (int s = 0; s < SAMPLES; s++) {
            assertThat(sample.weight(0, s)).isGreaterThanOrEqualTo(0.4 - 1e-7);
        }
    }

    /** Standard error of a mean: at most √(0.25/2.5)/200. */
    @ParameterizedTest
    @ValueSource(doubles = {1.5, 15, 63, 399})
    void scattersAroundStatedWeights(double concentration) {
        double[] stated = {0.5, 0.3, 0.15, 0.05};
        WeightSample sample =
                new WeightSampler.AroundStated(List.of(0.5, 0.3, 0.15, 0.05), concentration).sample(bank(4));
        double[] mean = sample.mean();
        double[] spread = spread(sample);
        for (int c = 0; c < 4; c++) {
            double sd = Math.sqrt(stated[c] * (1 - stated[c]) / (concentration + 1));
            assertThat(mean[c]).isCloseTo(stated[c], within(4 * sd / 200));
            assertThat(spread[c]).isCloseTo(sd, within(0.03 * sd));
        }
    }

    /** A slider moved by a hundredth of a point moves no draw by more than a quarter of a point. */
    @Test
    void movesSmoothlyWithTheStatedWeights() {
        WeightSample before = new WeightSampler.AroundStated(List.of(0.3, 0.5, 0.2), Sureness.GUESS).sample(bank(3));
        WeightSample after =
                new WeightSampler.AroundStated(List.of(0.3001, 0.4999, 0.2), Sureness.GUESS).sample(bank(3));
        double largest = 0;
        for (int s = 0; s < SAMPLES; s++) {
            largest = Math.max(largest, Math.abs(before.weight(0, s) - after.weight(0, s)));
        }
        assertThat(largest).isBetween(1e-5, 2.5e-3);
    }

    @Test
    void turnsSurenessIntoPoints() {
        assertThat(Sureness.FAIRLY_SURE.concentration()).isCloseTo(63, within(1e-9));
        assertThat(Sureness.GUESS.concentration()).isLessThan(Sureness.VERY_SURE.concentration());
    }

    /** Centroid of w1 >= w2 >= w3: rank-order centroid weights 11/18, 5/18, 2/18. */
    @Test
    void keepsAFullOrder() {
        WeightSample sample = WeightSampler.OrderOnly.of(List.of(2, 0, 1)).sample(bank(3));
        assertThat(sample.mean()).containsExactly(new double[] {5.0 / 18, 2.0 / 18, 11.0 / 18}, within(3e-3));
        for (int s = 0; s < SAMPLES; s++) {
            assertThat(sample.weight(2, s)).isGreaterThanOrEqualTo(sample.weight(0, s));
            assertThat(sample.weight(0, s)).isGreaterThanOrEqualTo(sample.weight(1, s));
        }
    }

    /** One above two equals: the two share the centroid of places 2 and 3, (5/18 + 2/18)/2, and either may be larger. */
    @Test
    void leavesTheOrderInATierOpen() {
        WeightSample sample = new WeightSampler.OrderOnly(List.of(List.of(1), List.of(0, 2)), 0).sample(bank(3));
        assertThat(sample.mean()).containsExactly(new double[] {7.0 / 36, 11.0 / 18, 7.0 / 36}, within(3e-3));
        double larger = 0;
        for (int s = 0; s < SAMPLES; s++) {
            larger += sample.weight(0, s) > sample.weight(2, s) ? 1.0 / SAMPLES : 0;
            assertThat(sample.weight(1, s)).isGreaterThanOrEqualTo(Math.max(sample.weight(0, s), sample.weight(2, s)));
        }
        assertThat(larger).isCloseTo(0.5, within(4 * 0.5 / 200));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.4, 1, 3, 30, 200})
    void interpolatesGammaQuantiles(double shape) {
        GammaQuantile quantile = new GammaQuantile(shape);
        GammaDistribution exact = new GammaDistribution(shape, 1);
        for (double score = -3.1; score <= 3.2; score += 0.37) {
            double probability = 0.5 * Erf.erfc(-score / Math.sqrt(2));
            double reached = exact.cumulativeProbability(Math.exp(quantile.logAt(score)));
            assertThat(reached).isCloseTo(probability, within(2e-5));
        }
    }

    @Test
    void makesLowDiscrepancyBanksWithAnErrorEstimate() {
        WeightBank bank = WeightBank.lowDiscrepancy(5, 4, 1_024, 8);
        assertThat(bank.samples()).isEqualTo(8 * 1_024);
        WeightSample sample = new WeightSampler.Uniform(4).sample(bank);
        // Plain random numbers would have a standard error of 0.19/√8192 = 2.1e-3
        assertThat(sample.mean()).containsExactly(new double[] {0.25, 0.25, 0.25, 0.25}, within(3e-4));
        assertThat(sample.replicates()).isEqualTo(8);
    }

    @Test
    void rejectsWhatIsNoOrder() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WeightSampler.OrderOnly.of(List.of(0, 2)))
                .withMessageContaining("each criterion from 0 to 1 once");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WeightSampler.Uniform(List.of(0.8, 0.4)))
                .withMessageContaining("1.2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WeightSampler.Fixed(List.of(0.0, 0.0)))
                .withMessageContaining("not all be zero");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WeightBank.lowDiscrepancy(1, 3, 1_000, 8))
                .withMessageContaining("multiple of 512");
    }
}
