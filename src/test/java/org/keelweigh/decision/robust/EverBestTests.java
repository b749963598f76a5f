package org.keelweigh.decision.robust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.keelweigh.decision.AdditiveModel;
import org.keelweigh.decision.Cases;
import org.keelweigh.decision.Cases.Case;

class EverBestTests {

    @Provide
    Arbitrary<Case> cases() {
        return Cases.cases();
    }

    // unit vectors and a flat alternative (c, c, c): the flat one can win exactly from c = 1/3, with lead c - 1/3
    // (geometry of the weight triangle)
    @Test
    void knowsWhenAnAllRounderCanWin() {
        assertThat(flat(40).possible()).isTrue();
        assertThat(flat(40).lead()).isCloseTo(40 - 100 / 3.0, within(1e-6));
        assertThat(flat(40).weights()).allSatisfy(w -> assertThat(w).isCloseTo(1 / 3.0, within(1e-6)));
        assertThat(flat(33).possible()).isFalse();
        assertThat(flat(33).lead()).isCloseTo(33 - 100 / 3.0, within(1e-6));
    }

    private static EverBest flat(double c) {
        double[][] values = {{100, 0, 0}, {0, 100, 0}, {0, 0, 100}, {c, c, c}};
        return EverBest.of(values, new boolean[4], 3);
    }

    @Test
    void takesACopyForATie() {
        EverBest copy = EverBest.of(new double[][] {{30, 40}, {30, 40}}, new boolean[2], 1);
        assertThat(copy.possible()).isTrue();
        assertThat(copy.alone()).isFalse();
        assertThat(copy.lead()).isZero();
    }

    @Test
    void treatsAnOnlyChoiceAndARuledOutOne() {
        double[][] values = {{30, 40}, {50, 60}};
        boolean[] ruledOut = {false, true};
        assertThat(EverBest.of(values, ruledOut, 0).lead()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(EverBest.of(values, ruledOut, 1).possible()).isFalse();
    }

    // criteria with equal columns once made the solver return weights that do not reach its own optimum
    @Test
    void copesWithCriteriaThatAreAlike() {
        EverBest best = EverBest.of(new double[][] {{0, 0, 0}, {0, 0, 1}}, new boolean[2], 1);
        assertThat(best.lead()).isCloseTo(1, within(1e-9));
        assertThat(best.weights().get(2)).isCloseTo(1, within(1e-9));
    }

    @Property
    void reachesTheLeadItClaims(@ForAll("cases") Case all) {
        Case allowed = all.allAllowed();
        for (int a = 0; a < allowed.alternatives(); a++) {
            EverBest best = EverBest.of(allowed.values(), allowed.ruledOut(), a);
            double[] weights = best.weights().stream().mapToDouble(w -> w).toArray();
            assertThat(lead(allowed.values(), weights, a)).isCloseTo(best.lead(), within(1e-6));
            assertThat(best.lead()).isGreaterThanOrEqualTo(lead(allowed.values(), allowed.weights(), a) - 1e-6);
        }
    }

    private static double lead(double[][] values, double[] weights, int alternative) {
        double[] totals = AdditiveModel.totals(values, weights);
        double lead = Double.POSITIVE_INFINITY;
        for (int other = 0; other < totals.length; other++) {
            lead = other == alternative ? lead : Math.min(lead, totals[alternative] - totals[other]);
        }
        return lead;
    }

    @Property
    void agreesWithTheSmallestChange(@ForAll("cases") Case all) {
        for (int a = 0; a < all.alternatives(); a++) {
            assertThat(EverBest.of(all.values(), all.ruledOut(), a).possible())
                    .isEqualTo(SmallestChange.toWin(all.values(), all.weights(), all.ruledOut(), a)
                            .isPresent());
        }
    }
}
