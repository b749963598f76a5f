package org.keelweigh.decision.acceptability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.keelweigh.benchmark.AcceptabilityBenchmark;
import org.keelweigh.benchmark.NaiveAcceptability;

class PerturbedMeasuresTests {

    private static final double[][] BASE = AcceptabilityBenchmark.base(20, 12);
    private static final double[][] SD = AcceptabilityBenchmark.sd(20, 12);

    private static final double[] NEVER_FIRST = {};

    /** 400 shares of 200 000 samples each way: the largest difference stays below 4.5 standard errors. */
    @Test
    void agreesWithPlainDoubleArithmetic() {
        int samples = 200_000;
        Acceptability fast = new PerturbedMeasures(BASE, SD).analyse(1, samples, 2);
        NaiveAcceptability naive = new NaiveAcceptability(BASE, SD).run(2, samples);
        double worst = 0;
        for (int a = 0; a < 20; a++) {
            for (int r = 0; r < 20; r++) {
                double share = naive.rank[a][r] / (double) samples;
                double pooled = (share + fast.rankShare(a, r)) / 2;
                double error = Math.sqrt(2 * pooled * (1 - pooled) / samples);
                worst = Math.max(worst, Math.abs(fast.rankShare(a, r) - share) / Math.max(error, 1e-9));
            }
        }
        assertThat(worst).isLessThan(4.5);
    }

    /** Weights of a winner scatter by less than 0.08, so means over m wins differ by less than 0.08·√(2/m)·4.5. */
    @Test
    void agreesOnCentralWeights() {
        int samples = 100_000;
        Acceptability fast = new PerturbedMeasures(BASE, SD).analyse(5, samples, 1);
        NaiveAcceptability naive = new NaiveAcceptability(BASE, SD).run(6, samples);
        int compared = 0;
        for (int a = 0; a < 20; a++) {
            long wins = naive.rank[a][0];
            if (wins < 1_000) {
                continue;
            }
            compared++;
            double[] weights = fast.centralWeights(a).orElseThrow();
            for (int c = 0; c < 12; c++) {
                assertThat(weights[c])
                        .isCloseTo(naive.favouring[a][c] / wins, within(0.1 * Math.sqrt(2.0 / wins) * 4.5));
            }
        }
        assertThat(compared).isGreaterThan(5);
    }

    @Test
    void doesNotDependOnThreads() {
        PerturbedMeasures problem = new PerturbedMeasures(BASE, SD);
        Acceptability one = problem.analyse(9, 20_001, 1);
        for (int threads = 2; threads <= 5; threads++) {
            Acceptability several = problem.analyse(9, 20_001, threads);
            for (int a = 0; a < 20; a++) {
                for (int r = 0; r < 20; r++) {
                    assertThat(several.rankShare(a, r)).isEqualTo(one.rankShare(a, r));
                }
                assertThat(several.centralWeights(a).orElse(NEVER_FIRST))
                        .isEqualTo(one.centralWeights(a).orElse(NEVER_FIRST));
            }
        }
    }

    @Test
    void clampsMeasures() {
        Acceptability result = new PerturbedMeasures(new double[][] {{7}, {2}, {-3}}, new double[][] {{0}, {0.1}, {0}})
                .analyse(1, 1_000, 1);
        assertThat(result.chanceBest(0)).isEqualTo(1);
        assertThat(result.chanceBest(1)).isEqualTo(1);
        assertThat(result.rankShare(2, 2)).isEqualTo(1);
    }

    @Test
    void rejectsNegativeSpread() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PerturbedMeasures(new double[][] {{1}}, new double[][] {{-0.1}}))
                .withMessageContaining("sd -0.1");
    }
}
