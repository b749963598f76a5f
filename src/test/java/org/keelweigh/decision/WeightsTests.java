package org.keelweigh.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class WeightsTests {

    @Property
    void sumToOne(@ForAll @Size(min = 1, max = 16) List<@DoubleRange(min = 0, max = 1e9) Double> raw) {
        Assume.that(raw.stream().anyMatch(points -> points > 0));
        assertThat(Arrays.stream(of(raw).toArray()).sum()).isCloseTo(1, within(1e-12));
    }

    @Property
    void sumToOneAfterOneIsMoved(
            @ForAll @Size(min = 2, max = 16) List<@DoubleRange(min = 0, max = 100) Double> raw,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        Assume.that(raw.stream().anyMatch(points -> points > 0));
        Weights moved = of(raw).with("0", share);
        assertThat(moved.share("0")).isEqualTo(share);
        assertThat(Arrays.stream(moved.toArray()).sum()).isCloseTo(1, within(1e-12));
        assertThat(moved.asMap().values()).allMatch(w -> w >= 0);
    }

    private static Weights of(List<Double> raw) {
        Map<String, Double> map = new LinkedHashMap<>();
        for (int i = 0; i < raw.size(); i++) {
            map.put(String.valueOf(i), raw.get(i));
        }
        return Weights.of(map);
    }

    @Test
    void keepTheProportionsOfTheOthers() {
        Weights moved = of(List.of(5.0, 3.0, 2.0)).with("0", 0.2);
        assertThat(moved.toArray()).containsExactly(new double[] {0.2, 0.48, 0.32}, within(1e-15));
    }

    @Test
    void shareTheRestEquallyWhenTheOthersHaveNone() {
        assertThat(of(List.of(1.0, 0.0, 0.0)).with("0", 0.4).toArray())
                .containsExactly(new double[] {0.4, 0.3, 0.3}, within(1e-15));
    }

    @Test
    void survivePointsAtTheEdgeOfTheNumberRange() {
        assertThat(of(List.of(Double.MAX_VALUE, Double.MAX_VALUE)).toArray()).containsExactly(0.5, 0.5);
        assertThat(of(List.of(Double.MIN_VALUE, 0.0)).toArray()).containsExactly(1, 0);
    }

    @Test
    void seeNoEffectInACriterionThatDoesNotDiffer() {
        double[][] values = {{50, 0, 80}, {50, 40, 70}};
        assertThat(of(List.of(2.0, 1.0, 1.0)).effectiveShares(values))
                .containsExactly(new double[] {0, 0.8, 0.2}, within(1e-15));
        assertThat(of(List.of(1.0, 0.0, 0.0)).effectiveShares(values)).containsExactly(0, 0, 0);
    }

    @Test
    void followTheColumnsOfASet() {
        CriteriaSet set = new CriteriaSet(List.of(criterion("b"), criterion("a")));
        assertThat(Weights.of(Map.of("a", 1.0, "b", 3.0)).toArray(set)).containsExactly(0.75, 0.25);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Weights.equal(List.of("a", "c")).toArray(set))
                .withMessageContaining("[a, c]");
    }

    private static Criterion criterion(String id) {
        return new Criterion(id, id, "family", "", Direction.MORE_IS_BETTER, ValueFunction.linear(0, 1));
    }

    @Test
    void rejectWhatIsNoWeight() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Weights.of(Map.of("a", -1.0)))
                .withMessageContaining("'a'");
        assertThatIllegalArgumentException().isThrownBy(() -> Weights.of(Map.of("a", Double.NaN)));
        assertThatIllegalArgumentException().isThrownBy(() -> Weights.of(Map.of("a", 0.0)));
        assertThatIllegalArgumentException().isThrownBy(() -> Weights.of(Map.of()));
        Weights only = Weights.equal(List.of("a"));
        assertThatIllegalArgumentException().isThrownBy(() -> only.with("a", 0.5));
        assertThatIllegalArgumentException().isThrownBy(() -> only.with("b", 0.5));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Weights.equal(List.of("a", "b")).with("a", 1.5))
                .withMessageContaining("1.5");
    }

    @Test
    void doNotExposeTheirArray() {
        Weights weights = Weights.equal(List.of("a", "b"));
        weights.toArray()[0] = 7;
        assertThat(weights.share("a")).isEqualTo(0.5);
    }

    @Test
    void areEqualWhateverTheOrderOfTheirCriteria() {
        Map<String, Double> reversed = new LinkedHashMap<>();
        reversed.put("b", 3.0);
        reversed.put("a", 1.0);
        assertThat(Weights.of(reversed)).isEqualTo(Weights.of(Map.of("a", 1.0, "b", 3.0)));
        assertThat(Weights.of(reversed).criteria()).containsExactly("b", "a");
    }
}
