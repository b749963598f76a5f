package org.keelweigh.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.keelweigh.decision.ValueFunction.Point;

class ValueFunctionTests {

    private final ValueFunction bent = ValueFunction.of(new Point(10, 100), new Point(20, 40), new Point(40, 0));

    @Test
    void interpolatesBetweenPoints() {
        assertThat(bent.value(15)).isEqualTo(70);
        assertThat(bent.value(20)).isEqualTo(40);
        assertThat(bent.value(30)).isEqualTo(20);
    }

    @Test
    void clampsOutsideItsRange() {
        assertThat(bent.value(-5)).isEqualTo(100);
        assertThat(bent.value(Double.POSITIVE_INFINITY)).isZero();
        assertThat(bent.covers(9.99)).isFalse();
        assertThat(bent.covers(40)).isTrue();
        assertThat(bent.lowerEnd()).isEqualTo(10);
        assertThat(bent.upperEnd()).isEqualTo(40);
    }

    @Test
    void tellsMarginalValueToTheRightOfAPoint() {
        assertThat(bent.marginal(10)).isEqualTo(-6);
        assertThat(bent.marginal(20)).isEqualTo(-2);
        assertThat(bent.marginal(40)).isZero();
        assertThat(bent.marginal(9)).isZero();
    }

    @Test
    void drawsAStraightLineEitherWay() {
        assertThat(ValueFunction.linear(0, 50).value(20)).isEqualTo(40);
        assertThat(ValueFunction.linear(50, 0).value(20)).isEqualTo(60);
        assertThat(ValueFunction.linear(50, 0))
                .isEqualTo(ValueFunction.of(List.of(new Point(0, 100), new Point(50, 0))));
    }

    @Test
    void rejectsPointsThatMakeNoFunction() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ValueFunction.of(new Point(1, 0)))
                .withMessageContaining("2 points");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ValueFunction.of(new Point(2, 0), new Point(2, 100)))
                .withMessageContaining("increase");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ValueFunction.of(new Point(1, 30), new Point(2, 30)))
                .withMessageContaining("30.0 to every measure");
        assertThatIllegalArgumentException().isThrownBy(() -> ValueFunction.linear(3, 3));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Point(1, 100.5))
                .withMessageContaining("100.5");
        assertThatIllegalArgumentException().isThrownBy(() -> new Point(Double.NaN, 5));
        assertThatIllegalArgumentException().isThrownBy(() -> bent.value(Double.NaN));
    }

    @Property
    void neverRisesWhereLessIsBetter(
            @ForAll @DoubleRange(min = -100, max = 100) double one,
            @ForAll @DoubleRange(min = -100, max = 100) double other) {
        assertThat(bent.value(Math.min(one, other))).isGreaterThanOrEqualTo(bent.value(Math.max(one, other)));
    }
}
