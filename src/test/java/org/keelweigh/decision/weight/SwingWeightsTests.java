package org.keelweigh.decision.weight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.keelweigh.decision.AdditiveModel;
import org.keelweigh.decision.Offices;

class SwingWeightsTests {

    private static SwingWeights offices() {
        Map<String, Double> swings = new LinkedHashMap<>();
        List<Double> points = List.of(100.0, 80.0, 70.0, 30.0, 20.0, 10.0);
        for (int c = 0; c < points.size(); c++) {
            swings.put("c" + c, points.get(c));
        }
        return new SwingWeights(swings);
    }

    // oracle/offices.csv: swings 100/80/70/30/20/10 give 32/26/23/10/6/3 %
    @Test
    void normalisesSwings() {
        double[] shares = offices().weights().toArray();
        assertThat(shares)
                .containsExactly(new double[] {.322581, .258065, .225806, .096774, .064516, .032258}, within(5e-7));
        assertThat(shares).containsExactly(Offices.WEIGHTS, within(0.0051));
        assertThat(AdditiveModel.totals(Offices.values(), shares))
                .containsExactly(Offices.unroundedTotals(), within(5.1e-5));
    }

    @Test
    void rejectsSwingsOutsideTheirScale() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SwingWeights(Map.of("a", 101.0)))
                .withMessageContaining("101");
        assertThatIllegalArgumentException().isThrownBy(() -> new SwingWeights(Map.of("a", Double.NaN)));
        assertThatIllegalArgumentException().isThrownBy(() -> new SwingWeights(Map.of("a", 0.0)));
    }
}
