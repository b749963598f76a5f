package org.keelweigh.decision.information;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class TestOutlookTests {

    /**
     * Worth making. The first leads by 60: 1 000 against 940. A fault with chance 0.2 costs it 400, so it is worth 1 080
     * sound and 680 faulty. A test finds 9 of 10 faults and raises 1 false alarm in 10.
     *
     * <pre>
     *   alarm    P = 0.2·0.9 + 0.8·0.1 = 0.26   fault 0.18/0.26 = 0.6923   value 1080 − 276.9 = 803.08 &lt; 940
     *   no alarm P = 0.74                       fault 0.02/0.74 = 0.0270   value 1080 −  10.8 = 1069.19
     *   gain = 0.26 · (940 − 803.08) = 35.6      known for certain: 0.2 · (940 − 680) = 52
     * </pre>
     */
    @Test
    void findsATestWorthMaking() {
        TestOutlook outlook = outlook(940, ImperfectTest.ofFault(0.2, 0.9, 0.1));
        assertThat(outlook.gain()).isCloseTo(35.6, within(1e-9));
        assertThat(outlook.changeChance()).isCloseTo(0.26, within(1e-12));
        assertThat(outlook.outcomes().get(0).choice()).isZero();
        assertThat(outlook.outcomes().get(1).choice()).isEqualTo(1);
        assertThat(outlook(940, ImperfectTest.perfect(new double[] {0.8, 0.2})).gain())
                .isCloseTo(52, within(1e-9));
    }

    /**
     * Not worth making. The same test, but the other is worth 790: even after an alarm the first is worth 803.08, so no
     * report changes the choice. Knowing for certain would still be worth 0.2 · (790 − 680) = 22.
     */
    @Test
    void findsATestThatCannotChangeTheChoice() {
        TestOutlook outlook = outlook(790, ImperfectTest.ofFault(0.2, 0.9, 0.1));
        assertThat(outlook.gain()).isZero();
        assertThat(outlook.cannotChangeTheChoice()).isTrue();
        assertThat(outlook(790, ImperfectTest.perfect(new double[] {0.8, 0.2})).gain())
                .isCloseTo(22, within(1e-9));
    }

    private static TestOutlook outlook(double other, ImperfectTest test) {
        return TestOutlook.evaluate(
                new double[] {1000, other}, 0, test.reportProbability(), test.valueGivenReport(new double[] {1080, 680
                }));
    }

    /** Weights (1, 0) make the first lead by 100, weights (0, 1) by 10: a loss of 40 at chance 0.5 matters to the second only. */
    @Test
    void averagesOverPeopleAndNotOverTheirWeights() {
        double[][] base = {{100, 0}, {10, 0}};
        double[][] given = {{140, 60}, {50, -30}};
        TestOutlook outlook = TestOutlook.evaluate(base, 0, new double[] {0.5, 0.5}, given);
        assertThat(outlook.gain()).isCloseTo(0.5 * (0 + 0.5 * 30), within(1e-12));
        assertThat(outlook.changeChance()).isCloseTo(0.25, within(1e-12));
        assertThat(outlook.gainError()).isCloseTo(7.5, within(1e-9));
        assertThat(TestOutlook.evaluate(new double[] {55, 0}, 0, new double[] {0.5, 0.5}, new double[] {95, 15})
                        .gain())
                .isZero();
    }

    @Test
    void neverChoosesWhatIsRuledOut() {
        TestOutlook outlook = TestOutlook.evaluate(
                new double[] {Double.NEGATIVE_INFINITY, 5}, 0, new double[] {0.5, 0.5}, new double[] {50, 60});
        assertThat(outlook.gain()).isZero();
        assertThat(outlook.outcomes()).allMatch(report -> report.choice() == 1);
    }

    @Test
    void findsNothingToChangeWithOneAlternative() {
        TestOutlook outlook = TestOutlook.evaluate(
                new double[] {5, Double.NEGATIVE_INFINITY}, 0, new double[] {0.5, 0.5}, new double[] {0, 10});
        assertThat(outlook.cannotChangeTheChoice()).isTrue();
    }

    @Test
    void refusesReportsThatDoNotAverageToTheValueNow() {
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        TestOutlook.evaluate(new double[] {10, 0}, 0, new double[] {0.5, 0.5}, new double[] {8, 8}))
                .withMessageContaining("average 8.0 but the alternative's value now is 10.0");
    }

    @Property(tries = 300)
    void isWorthNoMoreThanKnowing(@ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double fault = random.nextDouble();
        double[] given = random.doubles(2, -100, 100).toArray();
        double[] base = random.doubles(4, -100, 100).toArray();
        base[2] = (1 - fault) * given[0] + fault * given[1];
        ImperfectTest imperfect = ImperfectTest.ofFault(fault, random.nextDouble(), random.nextDouble());
        ImperfectTest perfect = ImperfectTest.perfect(new double[] {1 - fault, fault});
        double evsi = TestOutlook.evaluate(base, 2, imperfect.reportProbability(), imperfect.valueGivenReport(given))
                .gain();
        double evppi = TestOutlook.evaluate(base, 2, perfect.reportProbability(), perfect.valueGivenReport(given))
                .gain();
        assertThat(evsi).isGreaterThanOrEqualTo(0);
        assertThat(evppi).isGreaterThanOrEqualTo(evsi - 1e-9);
        double[][] payoff = new double[4][2];
        for (int a = 0; a < 4; a++) {
            Arrays.fill(payoff[a], base[a]);
        }
        payoff[2] = given;
        assertThat(evppi).isCloseTo(new PayoffTable(new double[] {1 - fault, fault}, payoff).evpi(), within(1e-9));
    }
}
