package org.keelweigh.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.keelweigh.decision.Cases.Case;

class FrontierTests {

    @Provide
    Arbitrary<Case> positive() {
        return Cases.positive();
    }

    // oracle/offices.csv: the efficient offices by rent and value are Carlisle, Gorton, Addison
    @Test
    void findsTheEfficientOffices() {
        Frontier frontier = Frontier.of(Offices.rents(), Offices.totals(), new boolean[7]);
        assertThat(frontier.pareto()).containsExactly(Offices.CARLISLE, Offices.GORTON, Offices.ADDISON);
        assertThat(frontier.convex()).containsExactly(Offices.CARLISLE, Offices.GORTON, Offices.ADDISON);
        // 5000 for 12.8 points, then 20000 for 20.6 points
        assertThat(frontier.pricesPerPoint(Offices.rents(), Offices.totals()))
                .satisfiesExactly(
                        first -> assertThat(first).isCloseTo(390.625, within(1e-9)),
                        second -> assertThat(second).isCloseTo(970.873786, within(1e-6)));
    }

    @Test
    void leavesOutWhatLiesInADent() {
        double[] costs = {0, 5, 10, 10, 5};
        double[] values = {0, 4, 10, 10, 4};
        Frontier frontier = Frontier.of(costs, values, new boolean[5]);
        assertThat(frontier.pareto()).containsExactly(0, 1, 4, 2, 3);
        assertThat(frontier.convex()).containsExactly(0, 2, 3);
        assertThat(frontier.pricesPerPoint(costs, values)).containsExactly(1.0);
    }

    @Test
    void keepsWhatLiesOnAStraightEdge() {
        Frontier frontier = Frontier.of(new double[] {0, 5, 10}, new double[] {0, 5, 10}, new boolean[3]);
        assertThat(frontier.convex()).containsExactly(0, 1, 2);
    }

    @Test
    void ignoresWhatIsRuledOut() {
        boolean[] ruledOut = new boolean[7];
        ruledOut[Offices.GORTON] = true;
        assertThat(Frontier.of(Offices.rents(), Offices.totals(), ruledOut).pareto())
                .containsExactly(Offices.CARLISLE, 3, Offices.ADDISON);
    }

    @Property
    void holdsTheBestForEveryPricePerPoint(
            @ForAll("positive") Case all, @ForAll @DoubleRange(min = 0.01, max = 100) double price) {
        double[] costs = column(all, 0);
        double[] values = column(all, 1);
        Frontier frontier = Frontier.of(costs, values, new boolean[costs.length]);
        double bestOfAll = Double.NEGATIVE_INFINITY;
        for (int a = 0; a < costs.length; a++) {
            bestOfAll = Math.max(bestOfAll, values[a] * price - costs[a]);
        }
        double best = frontier.convex().stream()
                .mapToDouble(a -> values[a] * price - costs[a])
                .max()
                .orElseThrow();
        assertThat(best).isCloseTo(bestOfAll, within(1e-9));
        assertThat(frontier.pareto()).containsAll(frontier.convex());
    }

    private static double[] column(Case all, int column) {
        double[] numbers = new double[all.alternatives()];
        for (int a = 0; a < numbers.length; a++) {
            numbers[a] = all.values()[a][column];
        }
        return numbers;
    }

    @Test
    void rejectsCostsWithoutValues() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Frontier.of(new double[2], new double[3], new boolean[2]))
                .withMessageContaining("2 costs for 3 values");
    }
}
