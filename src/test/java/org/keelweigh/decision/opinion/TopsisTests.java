package org.keelweigh.decision.opinion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.keelweigh.decision.Cases;
import org.keelweigh.decision.Cases.Case;

class TopsisTests {

    @Provide
    Arbitrary<Case> cases() {
        return Cases.cases();
    }

    // C.-L. Hwang and K. Yoon, Multiple Attribute Decision Making, Springer LNEMS 186, 1981: fighter aircraft;
    // printed closeness .643 .268 .613 .312
    @Test
    void reproducesTheAircraft() {
        double[][] aircraft = {
            {2.0, 1500, 20000, 5.5, 5, 9},
            {2.5, 2700, 18000, 6.5, 3, 5},
            {1.8, 2000, 21000, 4.5, 7, 7},
            {2.2, 1800, 20000, 5.0, 5, 5}
        };
        double[] weights = {0.2, 0.1, 0.1, 0.1, 0.2, 0.3};
        Topsis topsis = Topsis.of(aircraft, weights, new boolean[] {true, true, true, false, true, true});
        assertClose(topsis.toIdeal(), 1e-5, 0.054557, 0.119679, 0.057977, 0.100937);
        assertClose(topsis.toAntiIdeal(), 1e-5, 0.098383, 0.043903, 0.092044, 0.045836);
        assertClose(topsis.opinion().scores(), 1e-5, 0.643277, 0.268384, 0.613542, 0.312291);
        // the print cuts .6135 to .613
        assertClose(topsis.opinion().scores(), 6e-4, 0.643, 0.268, 0.613, 0.312);
        assertThat(topsis.opinion().ranks()).containsExactly(1, 4, 2, 3);
    }

    // G.-H. Tzeng and J.-J. Huang, Multiple Attribute Decision Making, CRC 2011; printed .5037 .6581 .7482 .334
    @Test
    void reproducesTheTextbookExample() {
        double[][] table = {{5, 8, 4}, {7, 6, 8}, {8, 8, 6}, {7, 4, 6}};
        Topsis topsis = Topsis.of(table, new double[] {0.3, 0.4, 0.3}, all(3));
        assertClose(topsis.opinion().scores(), 1e-5, 0.50372, 0.658085, 0.748249, 0.333997);
        assertThat(topsis.opinion().ranks()).containsExactly(3, 2, 1, 4);
    }

    // exact by the formula
    @Test
    void isExactInSmallCases() {
        double[] half = {0.5, 0.5};
        Topsis mirrored = Topsis.of(new double[][] {{3, 4}, {4, 3}}, half, all(2));
        assertClose(mirrored.toIdeal(), 1e-12, 0.1, 0.1);
        assertClose(mirrored.opinion().scores(), 1e-12, 0.5, 0.5);
        assertClose(
                Topsis.of(new double[][] {{2, 2}, {1, 1}}, half, all(2))
                        .opinion()
                        .scores(),
                1e-12,
                1,
                0);
    }

    @Test
    void staysUndecidedWhenNothingDiffers() {
        double[] half = {0.5, 0.5};
        Opinion same =
                Topsis.of(new double[][] {{7, 0}, {7, 0}, {7, 0}}, half, all(2)).opinion();
        assertThat(same.scores()).containsExactly(0.5, 0.5, 0.5);
        assertThat(same.ranks()).containsExactly(1, 1, 1);
    }

    @Property
    void givesNumbersFromZeroToOne(@ForAll("cases") Case all) {
        double[][] values = Arrays.stream(all.values()).map(double[]::clone).toArray(double[][]::new);
        for (double[] row : values) {
            row[0] = 42;
        }
        assertThat(Topsis.of(values, all.weights(), all(all.criteria()))
                        .opinion()
                        .scores())
                .allSatisfy(score -> assertThat(score).isBetween(0.0, 1.0));
    }

    @Property
    void doesNotDependOnTheUnitOfAColumn(
            @ForAll("cases") Case all, @ForAll @DoubleRange(min = 0.01, max = 1000) double factor) {
        double[][] scaled = Arrays.stream(all.values()).map(double[]::clone).toArray(double[][]::new);
        for (double[] row : scaled) {
            row[0] *= factor;
        }
        List<Double> before = Topsis.of(all.values(), all.weights(), all(all.criteria()))
                .opinion()
                .scores();
        List<Double> after =
                Topsis.of(scaled, all.weights(), all(all.criteria())).opinion().scores();
        for (int a = 0; a < all.alternatives(); a++) {
            assertThat(after.get(a)).isCloseTo(before.get(a), within(1e-6));
        }
    }

    @Test
    void rejectsFlagsThatDoNotFit() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Topsis.of(new double[][] {{1}}, new double[] {1}, all(2)))
                .withMessageContaining("2 direction flags");
    }

    private static boolean[] all(int n) {
        boolean[] flags = new boolean[n];
        Arrays.fill(flags, true);
        return flags;
    }

    private static void assertClose(List<Double> actual, double tolerance, double... expected) {
        assertThat(actual.stream().mapToDouble(x -> x).toArray()).containsExactly(expected, within(tolerance));
    }
}
