package org.keelweigh.decision;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.keelweigh.decision.Cases.Case;

class DominanceTests {

    @Provide
    Arbitrary<Case> cases() {
        return Cases.cases();
    }

    @Test
    void needsOneStrictlyBetterColumn() {
        Dominance dominance = Dominance.of(new double[][] {{5, 5}, {5, 4}, {5, 5}, {0, 9}});
        assertThat(dominance.dominates(0, 1)).isTrue();
        assertThat(dominance.dominates(0, 2)).isFalse();
        assertThat(dominance.dominates(1, 0)).isFalse();
        assertThat(dominance.dominators(1)).containsExactly(0, 2);
        assertThat(dominance.undominated()).containsExactly(0, 2, 3);
    }

    @Test
    void letsNothingBeDominatedByWhatCannotBeChosen() {
        Dominance dominance = Dominance.of(new double[][] {{5, 5}, {5, 4}}, new boolean[] {true, false});
        assertThat(dominance.undominated()).containsExactly(1);
    }

    @Property
    void isTransitiveAndNeverMutual(@ForAll("cases") Case all) {
        Dominance d = Dominance.of(all.values());
        for (int a = 0; a < all.alternatives(); a++) {
            assertThat(d.dominates(a, a)).isFalse();
            for (int b : d.dominators(a)) {
                assertThat(d.dominates(a, b)).isFalse();
                assertThat(d.dominators(a)).containsAll(d.dominators(b));
            }
        }
        assertThat(d.undominated()).isNotEmpty();
    }
}
