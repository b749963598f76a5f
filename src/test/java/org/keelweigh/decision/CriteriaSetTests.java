package org.keelweigh.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.entry;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.keelweigh.decision.ValueFunction.Point;

class CriteriaSetTests {

    private static final Criterion COST = new Criterion(
            "cost",
            "Yearly cost",
            "money",
            "EUR",
            Direction.LESS_IS_BETTER,
            ValueFunction.linear(1000, 0),
            Set.of("price", "upkeep"));
    private static final Criterion MASS =
            new Criterion("mass", "Mass", "handling", "kg", Direction.LESS_IS_BETTER, ValueFunction.linear(60, 10));
    private static final Criterion LENGTH = new Criterion(
            "length",
            "Length",
            "handling",
            "m",
            Direction.MIDDLE_IS_BEST,
            ValueFunction.of(new Point(2, 0), new Point(4, 100), new Point(6, 0)));
    private static final CriteriaSet SET = new CriteriaSet(List.of(COST, MASS, LENGTH));

    @Test
    void valuesMeasuresInColumnOrder() {
        assertThat(SET.values(new double[][] {{250, 35, 3}, {2000, 10, 4}}))
                .isDeepEqualTo(new double[][] {{75, 50, 50}, {0, 100, 100}});
        assertThat(SET.indexOf("length")).isEqualTo(2);
    }

    @Test
    void groupsByFamilyInOrder() {
        assertThat(SET.families()).containsExactly("money", "handling");
        assertThat(SET.inFamily("handling")).containsExactly(MASS, LENGTH);
        assertThat(SET.familyShares(Weights.of(Map.of("cost", 2.0, "mass", 1.0, "length", 1.0))))
                .containsExactly(entry("money", 0.5), entry("handling", 0.5));
    }

    @Test
    void refusesToCountAPartTwice() {
        Criterion price = new Criterion(
                "price",
                "Asking price",
                "money",
                "EUR",
                Direction.LESS_IS_BETTER,
                ValueFunction.linear(3000, 0),
                Set.of("price"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CriteriaSet(List.of(COST, price)))
                .withMessage("'Yearly cost' and 'Asking price' both count 'price', so it would weigh twice: "
                        + "leave it out of one of them");
    }

    @Test
    void refusesRepeatedIdsAndAnEmptySet() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CriteriaSet(List.of(MASS, MASS)))
                .withMessageContaining("unique");
        assertThatIllegalArgumentException().isThrownBy(() -> new CriteriaSet(List.of()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SET.indexOf("colour"))
                .withMessageContaining("colour");
        assertThatIllegalArgumentException().isThrownBy(() -> SET.values(new double[] {1, 2}));
    }

    @Test
    void refusesAValueFunctionAgainstTheDirection() {
        ValueFunction rising = ValueFunction.linear(0, 1);
        ValueFunction falling = ValueFunction.linear(1, 0);
        ValueFunction valley = ValueFunction.of(new Point(0, 100), new Point(1, 0), new Point(2, 100));
        assertRefused(Direction.MORE_IS_BETTER, falling);
        assertRefused(Direction.LESS_IS_BETTER, rising);
        assertRefused(Direction.MIDDLE_IS_BEST, rising);
        assertRefused(Direction.MIDDLE_IS_BEST, falling);
        assertRefused(Direction.MIDDLE_IS_BEST, valley);
        assertRefused(Direction.MORE_IS_BETTER, valley);
    }

    private static void assertRefused(Direction direction, ValueFunction function) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Criterion("c", "C", "f", "", direction, function))
                .withMessageContaining("contradicts");
    }
}
