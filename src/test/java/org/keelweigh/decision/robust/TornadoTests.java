package org.keelweigh.decision.robust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.keelweigh.decision.robust.Tornado.Factor;

class TornadoTests {

    private static final Factor SHARED = new Factor("shared", 0, 10, 100);
    private static final Factor OWN = new Factor("own", 0, 5, 12);
    private static final Factor SMALL = new Factor("small", 1, 2, 3);

    /** Two alternatives: the first is worth 60 + shared + small, the second 55 + shared + own, less 3. */
    private static double[] totals(double[] x) {
        return new double[] {60 + x[0] + x[2], 52 + x[0] + x[1]};
    }

    @Test
    void ordersBySwingOfTheMargin() {
        Tornado tornado = Tornado.of(List.of(SHARED, OWN, SMALL), TornadoTests::totals);
        assertThat(tornado.winner()).isZero();
        assertThat(tornado.baseMargin()).isEqualTo(5);
        assertThat(tornado.bars()).extracting(bar -> bar.factor().name()).containsExactly("own", "small", "shared");
        assertThat(tornado.bars().getFirst().marginAtLow()).isEqualTo(10);
        assertThat(tornado.bars().getFirst().marginAtHigh()).isEqualTo(-2);
        assertThat(tornado.bars().getFirst().swing()).isEqualTo(12);
    }

    @Test
    void tellsWhereTheChoiceFlips() {
        Tornado tornado = Tornado.of(List.of(SHARED, OWN, SMALL), TornadoTests::totals);
        assertThat(tornado.bars()).extracting(Tornado.Bar::flips).containsExactly(true, false, false);
    }

    @Test
    void findsThatACommonLiftMattersNothing() {
        Tornado tornado = Tornado.of(List.of(SHARED, OWN, SMALL), TornadoTests::totals);
        assertThat(tornado.bars().getLast().swing()).isZero();
    }

    @Test
    void treatsMinusInfinityAsRuledOut() {
        Tornado tornado = Tornado.of(List.of(OWN), x ->
                new double[] {x[0] > 10 ? Double.NEGATIVE_INFINITY : 60, 50, Double.NEGATIVE_INFINITY});
        assertThat(tornado.winner()).isZero();
        assertThat(tornado.bars().getFirst().marginAtHigh()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(tornado.bars().getFirst().flips()).isTrue();
    }

    @Test
    void rejectsRangesAndCasesWithoutAMargin() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Factor("width", 3, 2, 4))
                .withMessageContaining("width");
        assertThatIllegalArgumentException().isThrownBy(() -> Tornado.of(List.of(OWN), x -> new double[] {1}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Tornado.of(
                        List.of(OWN), x -> new double[] {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY}));
    }
}
