package org.keelweigh.decision.information;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class PayoffTableTests {

    private static final double EXACT = 1e-6;

    /**
     * The oil wildcatter of H. Raiffa, <i>Decision Analysis</i>, 1968 (drill 70, gross 0, 120, 270), as in P. Shenoy,
     * <i>Operations Research</i> 40:463-484, 1992. Likelihoods checked in a published example, priors from memory,
     * results worked out anew.
     */
    @Test
    void solvesTheOilWildcatter() {
        double[] prior = {0.5, 0.3, 0.2};
        double[][] seismic = {{0.6, 0.3, 0.1}, {0.3, 0.4, 0.4}, {0.1, 0.3, 0.5}};
        PayoffTable table = new PayoffTable(prior, new double[][] {{-70, 50, 200}, {0, 0, 0}});
        assertThat(table.bestValue()).isCloseTo(20, within(EXACT));
        assertThat(table.evpi()).isCloseTo(35, within(EXACT));
        assertThat(table.evsi(seismic)).isCloseTo(12.5, within(EXACT));

        ImperfectTest test = new ImperfectTest(prior, seismic);
        double[] given = test.valueGivenReport(new double[] {-70, 50, 200});
        assertThat(test.reportProbability()).containsExactly(new double[] {0.41, 0.35, 0.24}, within(EXACT));
        assertThat(given).containsExactly(new double[] {-30.487805, 32.857143, 87.5}, within(EXACT));

        TestOutlook outlook = TestOutlook.evaluate(new double[] {20, 0}, 0, test.reportProbability(), given);
        assertThat(outlook.gain()).isCloseTo(12.5, within(EXACT));
        assertThat(outlook.changeChance()).isCloseTo(0.41, within(EXACT));
        assertThat(outlook.outcomes().getFirst().choice()).isEqualTo(1);
    }

    /** Sell or drill: F. Hillier &amp; G. Lieberman, <i>Introduction to Operations Research</i>; results worked out anew. */
    @Test
    void solvesSellOrDrill() {
        PayoffTable table = new PayoffTable(new double[] {0.25, 0.75}, new double[][] {{700, -100}, {90, 90}});
        assertThat(table.bestValue()).isCloseTo(100, within(EXACT));
        assertThat(table.evpi()).isCloseTo(142.5, within(EXACT));
        assertThat(table.evsi(new double[][] {{0.6, 0.2}, {0.4, 0.8}})).isCloseTo(53, within(EXACT));
    }

    /** Stocks or savings: R. Clemen, <i>Making Hard Decisions</i>, 1996; likelihoods from memory, results worked out anew. */
    @Test
    void solvesTheStockMarket() {
        PayoffTable table = new PayoffTable(
                new double[] {0.5, 0.3, 0.2}, new double[][] {{1500, 100, -1000}, {1000, 200, -100}, {500, 500, 500}});
        assertThat(table.expectedValues()).containsExactly(new double[] {580, 540, 500}, within(EXACT));
        assertThat(table.evpi()).isCloseTo(420, within(EXACT));
        // The expert's three answers by state; 822 with, 580 without
        assertThat(table.evsi(new double[][] {{0.8, 0.15, 0.2}, {0.1, 0.7, 0.2}, {0.1, 0.15, 0.6}}))
                .isCloseTo(242, within(EXACT));
    }

    /** Buy for 330 a thing with uncertain repair and resale, or walk away; made for this test and worked out by hand. */
    @Test
    void valuesOneOfTwoFacts() {
        double[] repair = {50, 250};
        double[] repairChance = {0.7, 0.3};
        double[] resale = {320, 480};
        double[] chance = new double[4];
        double[] buy = new double[4];
        for (int i = 0; i < 4; i++) {
            chance[i] = repairChance[i / 2] * 0.5;
            buy[i] = resale[i % 2] - 330 - repair[i / 2];
        }
        PayoffTable table = new PayoffTable(chance, new double[][] {buy, new double[4]});
        assertThat(table.expectedValues()[0]).isCloseTo(-40, within(EXACT));
        assertThat(table.evpi()).isCloseTo(35, within(EXACT));
        assertThat(table.evppi(new int[] {0, 0, 1, 1})).isCloseTo(14, within(EXACT));
        assertThat(table.evppi(new int[] {0, 1, 0, 1})).isCloseTo(20, within(EXACT));
    }

    /** The states are pairs (i, j): a noisy report on i is worth at most i, which is worth at most the pair. */
    @Property(tries = 300)
    void ordersValuesOfInformation(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 5) int alternatives,
            @ForAll @IntRange(min = 1, max = 4) int reports) {
        SplittableRandom random = new SplittableRandom(seed);
        int facts = 3;
        double[] chance = distribution(random, facts * facts);
        double[][] payoff = new double[alternatives][];
        Arrays.setAll(payoff, a -> random.doubles(facts * facts, -100, 100).toArray());
        double[][] likelihood = new double[reports][facts * facts];
        int[] group = new int[facts * facts];
        for (int i = 0; i < facts; i++) {
            double[] row = distribution(random, reports);
            for (int j = 0; j < facts; j++) {
                group[i * facts + j] = i;
                for (int r = 0; r < reports; r++) {
                    likelihood[r][i * facts + j] = row[r];
                }
            }
        }
        PayoffTable table = new PayoffTable(chance, payoff);
        double evsi = table.evsi(likelihood);
        double evppi = table.evppi(group);
        assertThat(evsi).isGreaterThanOrEqualTo(0);
        assertThat(evppi).isGreaterThanOrEqualTo(evsi - 1e-9);
        assertThat(table.evpi()).isGreaterThanOrEqualTo(evppi - 1e-9);
    }

    private static double[] distribution(SplittableRandom random, int size) {
        double[] chance = random.doubles(size, 0.01, 1).toArray();
        double sum = Arrays.stream(chance).sum();
        return Arrays.stream(chance).map(p -> p / sum).toArray();
    }

    @Test
    void isZeroWhenOneActIsBestInEveryState() {
        PayoffTable table = new PayoffTable(new double[] {0.4, 0.6}, new double[][] {{5, 9}, {4, 8}});
        assertThat(table.evpi()).isZero();
    }

    @Test
    void rejectsChancesThatDoNotAddUp() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PayoffTable(new double[] {0.4, 0.5}, new double[][] {{1, 2}}))
                .withMessageContaining("0.9");
    }
}
