package org.keelweigh.haul;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class LiftingLawTests {

    @Property
    void compositeIndexIsNeverBelowTheHardestLift(
            @ForAll @DoubleRange(min = 1, max = 40) double one,
            @ForAll @DoubleRange(min = 1, max = 40) double other,
            @ForAll @DoubleRange(min = 0.2, max = 6) double often) {
        LiftingEquation.Part first = new LiftingEquation.Part(one, often, 20);
        LiftingEquation.Part second = new LiftingEquation.Part(other, often, 15);
        double fm = LiftDuration.SHORT.multiplier(often, true);
        double hardest = Math.max(one / (20 * fm), other / (15 * fm));
        assertThat(LiftingEquation.compositeIndex(List.of(first, second), LiftDuration.SHORT, true))
                .isGreaterThanOrEqualTo(hardest - 1e-9);
    }

    @Property
    void recommendsLessTheFartherTheHands(
            @ForAll @DoubleRange(min = 20, max = 62) double near, @ForAll @DoubleRange(min = 0, max = 20) double more) {
        assertThat(limit(near + more)).isLessThanOrEqualTo(limit(near));
    }

    private static double limit(double ahead) {
        return LiftingEquation.evaluate(
                        LiftUnits.METRIC,
                        new LiftTask(10, ahead, 75, 75, 40, 0, 0.2, LiftDuration.SHORT, LiftGrip.FAIR))
                .limit();
    }
}
