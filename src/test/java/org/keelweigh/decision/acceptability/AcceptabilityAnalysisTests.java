package org.keelweigh.decision.acceptability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class AcceptabilityAnalysisTests {

    private static final int SAMPLES = 3_000;

    private static Futures randomFutures(long seed, int alternatives, int criteria) {
        SplittableRandom random = new SplittableRandom(seed);
        Futures.Builder builder = Futures.builder(alternatives, criteria, SAMPLES);
        for (int a = 0; a < alternatives; a++) {
            for (int c = 0; c < criteria; c++) {
                if (random.nextInt(3) == 0) {
                    builder.sampled(a, c, random.doubles(SAMPLES).toArray());
                } else {
                    builder.certain(a, c, random.nextDouble());
                }
            }
        }
        return builder.build();
    }

    private static WeightSample weights(int criteria) {
        return new WeightSampler.Uniform(criteria).sample(WeightBank.random(4, criteria, SAMPLES));
    }

    @Property(tries = 40)
    void sharesOfEachAlternativeAndEachRankAddUpToOne(
            @ForAll @LongRange(min = 1, max = 10_000) long seed,
            @ForAll @IntRange(min = 1, max = 12) int alternatives,
            @ForAll @IntRange(min = 1, max = 6) int criteria) {
        Acceptability result = AcceptabilityAnalysis.of(randomFutures(seed, alternatives, criteria))
                .analyse(weights(criteria));
        for (int i = 0; i < alternatives; i++) {
            double row = 0;
            double column = 0;
            for (int j = 0; j < alternatives; j++) {
                row += result.rankShare(i, j);
                column += result.rankShare(j, i);
            }
            assertThat(row).isCloseTo(1, within(1e-12));
            // Totals equal within 2^-25 of their range share a rank: at most one sample of 3 000 here
            assertThat(column).isCloseTo(1, within(1.5 / SAMPLES));
        }
    }

    @Property(tries = 40)
    void agreesWithPlainCountingOfEverySample(
            @ForAll @LongRange(min = 1, max = 10_000) long seed, @ForAll @IntRange(min = 2, max = 9) int alternatives) {
        Futures futures = randomFutures(seed, alternatives, 4);
        WeightSample weights = weights(4);
        Acceptability result = AcceptabilityAnalysis.of(futures).analyse(weights);
        double[][] rank = new double[alternatives][alternatives];
        double[][] wins = new double[alternatives][alternatives];
        for (int s = 0; s < SAMPLES; s++) {
            double[] total = new double[alternatives];
            for (int a = 0; a < alternatives; a++) {
                for (int c = 0; c < 4; c++) {
                    total[a] += weights.weight(c, s) * futures.value(a, c, s);
                }
            }
            for (int a = 0; a < alternatives; a++) {
                int better = 0;
                for (int b = 0; b < alternatives; b++) {
                    better += total[b] > total[a] ? 1 : 0;
                    wins[a][b] += total[a] > total[b] ? 1.0 / SAMPLES : 0;
                }
                rank[a][better] += 1.0 / SAMPLES;
            }
        }
        for (int a = 0; a < alternatives; a++) {
            for (int b = 0; b < alternatives; b++) {
                assertThat(result.rankShare(a, b)).isCloseTo(rank[a][b], within(1.5 / SAMPLES));
                assertThat(result.winningChance(a, b).orElseThrow()).isCloseTo(wins[a][b], within(1.5 / SAMPLES));
            }
        }
    }

    @Test
    void neverPutsADominatedAlternativeFirst() {
        Futures futures = Futures.certain(new double[][] {{0.5, 0.6, 0.4}, {0.49, 0.6, 0.4}, {0.1, 0.9, 0.2}});
        Acceptability result = AcceptabilityAnalysis.of(futures)
                .analyse(new WeightSampler.Uniform(3).sample(WeightBank.random(1, 3, 10_000)));
        assertThat(result.chanceBest(1)).isZero();
        assertThat(result.centralWeights(1)).isEmpty();
        assertThat(result.winningChance(0, 1)).hasValue(1);
    }

    @Test
    void leavesOutWhatIsRuledOut() {
        BitSet ruledOut = new BitSet();
        ruledOut.set(0);
        Acceptability result = AcceptabilityAnalysis.of(
                        Futures.certain(new double[][] {{1, 1}, {0.5, 0.2}, {0.1, 0.6}}))
                .withRuledOut(ruledOut)
                .analyse(new WeightSampler.Fixed(List.of(3.0, 1.0)).sample(WeightBank.random(1, 2, 600)));
        assertThat(result.isEligible(0)).isFalse();
        assertThat(result.chanceBest(0)).isZero();
        assertThat(result.expectedRank(0)).isEmpty();
        assertThat(result.winningChance(0, 1)).hasValue(0);
        assertThat(result.chanceBest(1)).isEqualTo(1);
        assertThat(result.rankShare(2, 1)).isEqualTo(1);
        assertThat(result.centralWeights(1).orElseThrow()).containsExactly(new double[] {0.75, 0.25}, within(1e-7));
    }

    @Test
    void hasNoWinnerWhenAllAreRuledOut() {
        BitSet all = new BitSet();
        all.set(0, 2);
        Acceptability result = AcceptabilityAnalysis.of(Futures.certain(new double[][] {{1, 1}, {0, 0}}))
                .withRuledOut(all)
                .analyse(new WeightSampler.Uniform(2).sample(WeightBank.random(1, 2, 10)));
        assertThat(result.chanceBest(0) + result.chanceBest(1)).isZero();
    }

    @Test
    void letsEqualAlternativesShareTheBetterRank() {
        Futures futures = Futures.certain(new double[][] {{0.2, 0.3}, {0.7, 0.4}, {0.7, 0.4}, {0.2, 0.3}});
        Acceptability result = AcceptabilityAnalysis.of(futures)
                .analyse(new WeightSampler.Uniform(2).sample(WeightBank.random(1, 2, 777)));
        assertThat(result.chanceBest(1)).isEqualTo(1);
        assertThat(result.chanceBest(2)).isEqualTo(1);
        assertThat(result.rankShare(0, 2)).isEqualTo(1);
        assertThat(result.rankShare(3, 2)).isEqualTo(1);
        assertThat(result.winningChance(1, 2)).hasValue(0);
        assertThat(result.centralWeights(2).orElseThrow())
                .containsExactly(result.centralWeights(1).orElseThrow(), within(0.0));
    }

    @Test
    void doesNotDependOnThreads() {
        Futures futures = randomFutures(12, 7, 5);
        WeightSample weights = weights(5);
        Acceptability one = AcceptabilityAnalysis.of(futures).analyse(weights);
        Acceptability three = AcceptabilityAnalysis.of(futures).withThreads(3).analyse(weights);
        for (int a = 0; a < 7; a++) {
            for (int r = 0; r < 7; r++) {
                assertThat(three.rankShare(a, r)).isEqualTo(one.rankShare(a, r));
            }
            assertThat(three.centralWeights(a).isPresent())
                    .isEqualTo(one.centralWeights(a).isPresent());
            if (one.centralWeights(a).isPresent()) {
                assertThat(three.centralWeights(a).get())
                        .isEqualTo(one.centralWeights(a).get());
            }
        }
    }

    @Test
    void tellsSamplesForAWantedError() {
        Acceptability result = AcceptabilityAnalysis.of(Futures.certain(new double[][] {{1, 0}, {0, 1}}))
                .analyse(new WeightSampler.Uniform(2).sample(WeightBank.random(1, 2, 10_000)));
        assertThat(result.largestError()).isCloseTo(0.005, within(1e-5));
        assertThat(result.samplesFor(0.01)).isCloseTo(2_500, within(2L));
    }

    @Test
    void refusesDifferentNumbersOfSamples() {
        Futures futures = randomFutures(1, 3, 2);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AcceptabilityAnalysis.of(futures)
                        .analyse(new WeightSampler.Uniform(2).sample(WeightBank.random(1, 2, 10))))
                .withMessageContaining("10 samples");
    }

    @Test
    void refusesAMissingValue() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Futures.builder(1, 2, 10).certain(0, 0, 1).build())
                .withMessageContaining("criterion 1");
    }
}
