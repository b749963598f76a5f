package org.keelweigh.decision.opinion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.keelweigh.decision.Cases;
import org.keelweigh.decision.Cases.Case;
import org.keelweigh.decision.opinion.PreferenceFunction.Gaussian;
import org.keelweigh.decision.opinion.PreferenceFunction.Level;
import org.keelweigh.decision.opinion.PreferenceFunction.Linear;
import org.keelweigh.decision.opinion.PreferenceFunction.UShape;
import org.keelweigh.decision.opinion.PreferenceFunction.Usual;
import org.keelweigh.decision.opinion.PreferenceFunction.VShape;

class PrometheeTwoTests {

    @Provide
    Arbitrary<Case> cases() {
        return Cases.cases();
    }

    // J.P. Brans, P. Vincke and B. Mareschal, EJOR 24:228-238, 1986: six plants, one criterion of each type, equal
    // weights. The printed matrix is truncated in places, so it is checked to .00101; full precision recomputed.
    private static PrometheeTwo plants() {
        double[][] plants = {
            {80, 90, 6.0, 5.4, 8, 5}, {65, 58, 2.0, 9.7, 1, 1}, {83, 60, 4.0, 7.2, 4, 7},
            {40, 80, 10.0, 7.5, 7, 10}, {52, 72, 6.0, 2.0, 3, 8}, {94, 96, 7.0, 3.6, 5, 6}
        };
        double[] sixth = new double[6];
        Arrays.fill(sixth, 1 / 6.0);
        return PrometheeTwo.of(
                plants,
                sixth,
                new boolean[] {false, true, false, false, false, true},
                List.of(
                        new UShape(10),
                        new VShape(30),
                        new Linear(0.5, 5),
                        new Level(1, 6),
                        new Usual(),
                        new Gaussian(5)));
    }

    @Test
    void reproducesThePrintedPreferences() {
        double[][] printed = {
            {0, 0.296, 0.25, 0.268, 0.1, 0.185}, {0.462, 0, 0.389, 0.333, 0.296, 0.5},
            {0.236, 0.18, 0, 0.333, 0.056, 0.429}, {0.399, 0.505, 0.305, 0, 0.223, 0.212},
            {0.444, 0.515, 0.487, 0.38, 0, 0.448}, {0.286, 0.399, 0.25, 0.432, 0.133, 0}
        };
        PrometheeTwo plants = plants();
        for (int a = 0; a < 6; a++) {
            assertThat(array(plants.preferences().get(a))).containsExactly(printed[a], within(0.00101));
        }
        assertThat(plants.preferences().get(0).get(1)).isCloseTo(0.295642, within(1e-6));
        assertThat(plants.preferences().get(2).get(5)).isCloseTo(0.429226, within(1e-6));
    }

    @Test
    void reproducesTheFlows() {
        PrometheeTwo plants = plants();
        assertThat(array(plants.positiveFlows()))
                .containsExactly(
                        new double[] {0.219869, 0.396296, 0.246627, 0.329257, 0.454722, 0.300072}, within(1e-6));
        assertThat(array(plants.negativeFlows()))
                .containsExactly(
                        new double[] {0.365533, 0.379134, 0.336151, 0.349259, 0.161822, 0.354944}, within(1e-6));
        assertThat(array(plants.opinion().scores()))
                .containsExactly(
                        new double[] {-0.145664, 0.017162, -0.089524, -0.020003, 0.2929, -0.054872}, within(1e-6));
        assertThat(plants.opinion().ranks()).containsExactly(6, 2, 5, 3, 1, 4);
    }

    @Property
    void sumsNetFlowsToZero(@ForAll("cases") Case all) {
        boolean[] more = new boolean[all.criteria()];
        PrometheeTwo result = PrometheeTwo.of(
                all.values(), all.weights(), more, Collections.nCopies(all.criteria(), new Linear(5, 30)));
        assertThat(result.opinion().scores().stream().mapToDouble(x -> x).sum()).isCloseTo(0, within(1e-12));
    }

    @Test
    void comparesAnOnlyAlternativeWithNobody() {
        PrometheeTwo only =
                PrometheeTwo.of(new double[][] {{5}}, new double[] {1}, new boolean[] {true}, List.of(new Usual()));
        assertThat(only.opinion().scores()).containsExactly(0.0);
    }

    @Test
    void keepsToItsThresholds() {
        assertThat(new Usual().degree(0)).isZero();
        assertThat(new Usual().degree(1e-9)).isEqualTo(1);
        assertThat(new UShape(10).degree(10)).isZero();
        assertThat(new UShape(10).degree(10.01)).isEqualTo(1);
        assertThat(new VShape(30).degree(15)).isEqualTo(0.5);
        assertThat(new VShape(30).degree(-15)).isZero();
        assertThat(new Level(1, 6).degree(6)).isEqualTo(0.5);
        assertThat(new Level(1, 6).degree(6.01)).isEqualTo(1);
        assertThat(new Level(1, 6).degree(1)).isZero();
        assertThat(new Linear(2, 6).degree(4)).isEqualTo(0.5);
        assertThat(new Linear(2, 6).degree(9)).isEqualTo(1);
        assertThat(new Gaussian(5).degree(5)).isCloseTo(1 - Math.exp(-0.5), within(1e-15));
        assertThat(new Gaussian(5).degree(-5)).isZero();
    }

    @Test
    void rejectsThresholdsInTheWrongOrder() {
        assertThatIllegalArgumentException().isThrownBy(() -> new UShape(-1)).withMessageContaining("-1");
        assertThatIllegalArgumentException().isThrownBy(() -> new VShape(0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Level(3, 3)).withMessageContaining("above 3.0");
        assertThatIllegalArgumentException().isThrownBy(() -> new Linear(3, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> new Gaussian(Double.NaN));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> PrometheeTwo.of(new double[][] {{5}}, new double[] {1}, new boolean[] {true}, List.of()))
                .withMessageContaining("0 preference functions");
    }

    private static double[] array(List<Double> list) {
        return list.stream().mapToDouble(x -> x).toArray();
    }
}
