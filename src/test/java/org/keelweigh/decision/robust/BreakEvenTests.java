package org.keelweigh.decision.robust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.keelweigh.decision.robust.BreakEven.AlwaysAbove;
import org.keelweigh.decision.robust.BreakEven.AlwaysBelow;
import org.keelweigh.decision.robust.BreakEven.Found;

class BreakEvenTests {

    @Property
    void findsTheRootOfARisingOrFallingFunction(@ForAll @DoubleRange(max = 5000) double root, @ForAll boolean falling) {
        double sign = falling ? -1 : 1;
        BreakEven found = BreakEven.find(x -> sign * (Math.cbrt(x - root) + (x - root) / 1000), 0, 5000);
        assertThat(found)
                .isInstanceOfSatisfying(Found.class, f -> assertThat(f.at()).isCloseTo(root, within(1e-5)));
    }

    @Test
    void tellsASideWhenThereIsNoCrossing() {
        assertThat(BreakEven.find(x -> x + 1, 0, 10)).isEqualTo(new AlwaysAbove());
        assertThat(BreakEven.find(x -> -x - 1, 0, 10)).isEqualTo(new AlwaysBelow());
        assertThat(BreakEven.find(x -> 3, 0, 10)).isEqualTo(new AlwaysAbove());
    }

    @Test
    void findsACrossingAtAnEnd() {
        assertThat(BreakEven.find(x -> x, 0, 10)).isEqualTo(new Found(0));
        assertThat(BreakEven.find(x -> x - 10, 0, 10)).isEqualTo(new Found(10));
    }

    @Test
    void findsAJumpAcrossZero() {
        assertThat(BreakEven.find(x -> x < 7.3 ? 5 : -5, 0, 10))
                .isInstanceOfSatisfying(Found.class, f -> assertThat(f.at()).isCloseTo(7.3, within(1e-6)));
    }

    @Test
    void findsAnEndOfAFlatStretchOrAPointInIt() {
        assertThat(BreakEven.find(x -> Math.max(0, x - 6) + Math.min(0, x - 4), 0, 10))
                .isInstanceOfSatisfying(Found.class, f -> assertThat(f.at()).isBetween(4.0, 6.0));
    }

    @Test
    void refusesAFunctionThatTurnsRound() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BreakEven.find(x -> (x - 3) * (x - 8), 0, 10))
                .withMessageContaining("monotone");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BreakEven.find(x -> (x - 5) * (x - 5) - 1, 0, 10))
                .withMessageContaining("monotone");
        assertThatIllegalArgumentException().isThrownBy(() -> BreakEven.find(x -> Math.log(x - 1), 0, 10));
        assertThatIllegalArgumentException().isThrownBy(() -> BreakEven.find(x -> Double.NaN, 0, 10));
    }

    @Test
    void rejectsAnEmptyInterval() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BreakEven.find(x -> x, 10, 10))
                .withMessageContaining("10.0 to 10.0");
        assertThatIllegalArgumentException().isThrownBy(() -> BreakEven.find(x -> x, 0, Double.POSITIVE_INFINITY));
    }
}
