package org.keelweigh.decision.opinion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.keelweigh.decision.AdditiveModel;
import org.keelweigh.decision.Ranks;

class WeightedProductTests {

    // E. Triantaphyllou and S.H. Mann, Decision Support Systems 5:303-312, 1989; ratios and sums from memory,
    // recomputed
    private static final double[][] TABLE = {{25, 20, 15, 30}, {10, 30, 20, 30}, {30, 10, 30, 10}};
    private static final double[] WEIGHTS = {0.2, 0.15, 0.4, 0.25};
    private static final boolean[] MORE = {true, true, true, true};

    @Test
    void reproducesThePublishedRatios() {
        Opinion product = WeightedProduct.of(TABLE, WEIGHTS, MORE);
        List<Double> scores = product.scores();
        assertThat(scores.get(0)).isCloseTo(20.628104, within(1e-6));
        assertThat(scores.get(1)).isCloseTo(20.476725, within(1e-6));
        assertThat(scores.get(2)).isCloseTo(19.33182, within(1e-5));
        assertThat(scores.get(0) / scores.get(1)).isCloseTo(1.007393, within(1e-6));
        assertThat(scores.get(0) / scores.get(2)).isCloseTo(1.067054, within(1e-6));
        assertThat(scores.get(1) / scores.get(2)).isCloseTo(1.059224, within(1e-6));
        assertThat(product.ranks()).containsExactly(1, 2, 3);
    }

    // the same table: the sum puts last what the product puts first
    @Test
    void canContradictTheWeightedSum() {
        double[] sums = AdditiveModel.totals(TABLE, WEIGHTS);
        assertThat(sums).containsExactly(new double[] {21.5, 22, 22}, within(1e-9));
        assertThat(Ranks.competition(sums)).containsExactly(3, 1, 1);
    }

    // Triantaphyllou and Mann 1989, columns divided by their sums (log10 as in the tests of an open library)
    @Test
    void cancelsUnits() {
        double[][] shares = new double[3][4];
        for (int a = 0; a < 3; a++) {
            for (int c = 0; c < 4; c++) {
                shares[a][c] = TABLE[a][c] / (TABLE[0][c] + TABLE[1][c] + TABLE[2][c]);
            }
        }
        List<Double> scores = WeightedProduct.of(shares, WEIGHTS, MORE).scores();
        assertThat(Math.log10(scores.get(0))).isCloseTo(-0.50128589, within(1e-8));
        assertThat(Math.log10(scores.get(1))).isCloseTo(-0.50448471, within(1e-8));
        assertThat(Math.log10(scores.get(2))).isCloseTo(-0.52947246, within(1e-8));
    }

    @Test
    void turnsRoundWhereLessIsBetter() {
        double[][] table = {{2, 8}, {4, 8}};
        Opinion opinion = WeightedProduct.of(table, new double[] {0.5, 0.5}, new boolean[] {false, true});
        assertThat(opinion.ranks()).containsExactly(1, 2);
        assertThat(opinion.scores().getFirst()).isCloseTo(2, within(1e-12));
    }

    @Test
    void neverMakesUpForAZero() {
        double[][] table = {{0, 100}, {1, 1}};
        boolean[] more = {true, true};
        assertThat(WeightedProduct.of(table, new double[] {0.01, 0.99}, more).ranks())
                .containsExactly(2, 1);
        assertThat(WeightedProduct.of(table, new double[] {0, 1}, more).ranks()).containsExactly(1, 2);
    }

    @Test
    void rejectsMeasuresThatHaveNoRatio() {
        double[] one = {1};
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WeightedProduct.of(new double[][] {{-3}}, one, new boolean[] {true}))
                .withMessageContaining("-3.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WeightedProduct.of(new double[][] {{0}}, one, new boolean[] {false}));
    }
}
