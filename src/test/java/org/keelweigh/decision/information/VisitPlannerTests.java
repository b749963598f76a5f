package org.keelweigh.decision.information;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;

class VisitPlannerTests {

    private static final VisitPlanner.Candidate TEN_MINUTES = new VisitPlanner.Candidate(10, 0);

    /**
     * Complements, worked by hand. The leader is worth 100 now. The other is worth 70; two facts of its own add 20 or −20
     * each with chance one half. One fact makes it 90 at most: no change. Both make it 110 at chance 1/4: gain 10/4.
     */
    private static double complements(BitSet tests) {
        Prospect other =
                switch (tests.cardinality()) {
                    case 0 -> Prospect.certain(70);
                    case 1 -> new Prospect(new double[] {0.5, 0.5}, new double[] {50, 90});
                    default -> new Prospect(new double[] {0.25, 0.5, 0.25}, new double[] {30, 70, 110});
                };
        return Prospect.gain(List.of(Prospect.certain(100), other));
    }

    @Test
    void findsAPairOfWhichNeitherHelpsAlone() {
        VisitPlan plan = VisitPlanner.plan(List.of(TEN_MINUTES, TEN_MINUTES), VisitPlannerTests::complements, 30, 0);
        assertThat(plan).isInstanceOfSatisfying(VisitPlan.Route.class, route -> {
            assertThat(route.steps()).extracting(VisitPlan.Step::gainSoFar).containsExactly(0.0, 2.5);
            assertThat(route.gain()).isCloseTo(2.5, within(1e-12));
            assertThat(route.minutes()).isEqualTo(20);
        });
    }

    @Test
    void saysWhenNothingIsWorthTheTime() {
        assertThat(VisitPlanner.plan(List.of(TEN_MINUTES, TEN_MINUTES), VisitPlannerTests::complements, 30, 0.2))
                .isEqualTo(new VisitPlan.NothingWorthwhile(2.5));
        assertThat(VisitPlanner.plan(List.of(TEN_MINUTES, TEN_MINUTES), VisitPlannerTests::complements, 15, 0))
                .isEqualTo(new VisitPlan.NothingWorthwhile(0));
        assertThat(VisitPlanner.plan(List.of(), tests -> 0, 15, 0)).isEqualTo(new VisitPlan.NothingWorthwhile(0));
    }

    /** Single gains 30, 28 and 12 in 10, 20 and 5 minutes; the first two tell the same, so the second adds 1 to the first. */
    @Test
    void reckonsAnewAfterEachStep() {
        List<VisitPlanner.Candidate> candidates = List.of(
                new VisitPlanner.Candidate(10, 0), new VisitPlanner.Candidate(20, 0), new VisitPlanner.Candidate(5, 2));
        VisitPlanner.SetGain gain =
                tests -> (tests.get(0) && tests.get(1) ? 31 : tests.get(0) ? 30 : tests.get(1) ? 28 : 0)
                        + (tests.get(2) ? 12 : 0);
        VisitPlan plan = VisitPlanner.plan(candidates, gain, 60, 0.1);
        assertThat(plan).isInstanceOfSatisfying(VisitPlan.Route.class, route -> {
            assertThat(route.steps()).extracting(VisitPlan.Step::test).containsExactly(0, 2);
            assertThat(route.gain()).isEqualTo(42);
            assertThat(route.cost()).isEqualTo(2);
        });
    }

    @Test
    void keepsTheTimeLimit() {
        VisitPlan plan = VisitPlanner.plan(
                List.of(TEN_MINUTES, TEN_MINUTES, TEN_MINUTES), tests -> 5.0 * tests.cardinality(), 25, 0);
        assertThat(plan).isInstanceOfSatisfying(VisitPlan.Route.class, route -> assertThat(route.steps())
                .hasSize(2));
    }

    @Test
    void rejectsATestWithoutDuration() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new VisitPlanner.Candidate(0, 1))
                .withMessageContaining("minutes must be above 0");
    }

    /** Two uniform coins on {0, 10} against 6: the best is 10 at chance 3/4, else 6, so 9 against 6 now. */
    @Test
    void takesTheBestOfSeveralUncertainValues() {
        Prospect coin = new Prospect(new double[] {0.5, 0.5}, new double[] {10, 0});
        assertThat(Prospect.gain(List.of(coin, coin, Prospect.certain(6)))).isCloseTo(3, within(1e-12));
    }
}
