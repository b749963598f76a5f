package org.keelweigh.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class DiscountRateTests {

    /** Tables of NIST Handbook 135 (1995) print four digits of these; values from memory, recomputed. */
    @ParameterizedTest
    @CsvFileSource(resources = "/oracle/discount-factors.csv", useHeadersInDisplayName = true)
    void givesTheTabulatedFactors(String factor, double rate, double escalation, int years, double value, double tol) {
        DiscountRate d = new DiscountRate(rate);
        double computed =
                switch (factor) {
                    case "spv" -> d.singlePresentValue(years);
                    case "upv" -> d.uniformPresentValue(years);
                    case "upv*" -> d.escalatingPresentValue(escalation, years);
                    case "ucr" -> d.equivalentAnnual(1, years);
                    default -> Double.NaN;
                };
        assertThat(computed).isCloseTo(value, within(tol));
    }

    /** OMB Circular A-94 (1992), app. B, sample format: ten years at 7 %. Printed totals from memory, recomputed. */
    @Test
    void discountsTheTenYearStream() {
        DiscountRate seven = new DiscountRate(0.07);
        double costs = PresentValue.of(stream(10, 20, 30, 30, 20, 10, 5, 5, 5, 5), seven);
        double benefits = PresentValue.of(stream(0, 0, 5, 10, 30, 40, 40, 40, 40, 25), seven);
        assertThat(costs).isCloseTo(106.398717, within(1e-5));
        assertThat(benefits).isCloseTo(142.410152, within(1e-5));
        assertThat(benefits - costs).isCloseTo(36.011435, within(1e-5)).isCloseTo(36.00, within(0.02));
    }

    /**
     * First two rows: R. Brealey, S. Myers, F. Allen, Principles of Corporate Finance, machines of unequal life
     * (printed 28.37/10.61 and 21.00/11.45); last two: an exercise with printed answers 307.63/179.63, 411.59/168.42.
     */
    @ParameterizedTest
    @CsvSource({
        "0.06, 15, 5, 3, 28.36506, 10.611647",
        "0.06, 10, 6, 2, 21.000356, 11.454369",
        "0.11, 85, 130, 2, 307.628033, 179.63436",
        "0.11, 155, 105, 3, 411.590045, 168.428026"
    })
    void spreadsUnequalLivesEvenly(double d, double first, double annual, int n, double pv, double eac) {
        DiscountRate rate = new DiscountRate(d);
        double presentValue = first + annual * rate.uniformPresentValue(n);
        assertThat(presentValue).isCloseTo(pv, within(1e-6));
        assertThat(rate.equivalentAnnual(presentValue, n)).isCloseTo(eac, within(1e-6));
    }

    /** Fisher identity; NIST Handbook 135. The shortcut D = d + I would give 0.05. */
    @Test
    void convertsBetweenRealAndNominal() {
        DiscountRate real = new DiscountRate(0.03);
        double nominal = real.nominal(0.02);
        assertThat(nominal).isCloseTo(0.0506, within(1e-12));
        assertThat(DiscountRate.realOf(nominal, 0.02).perYear()).isCloseTo(0.03, within(1e-12));
        List<CashFlow> current = IntStream.rangeClosed(1, 5)
                .mapToObj(t -> new CashFlow(t, 100 * Math.pow(1.02, t)))
                .toList();
        assertThat(PresentValue.of(current, new DiscountRate(nominal))).isCloseTo(457.970718719, within(1e-9));
        assertThat(PresentValue.of(stream(100, 100, 100, 100, 100), real)).isCloseTo(457.970718719, within(1e-9));
    }

    @Property
    void countsPositiveFlowsLessAtAHigherRate(
            @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 0.01, max = 1e4) Double> amounts,
            @ForAll @DoubleRange(min = 0, max = 0.5) double low,
            @ForAll @Scale(3) @DoubleRange(min = 1e-3, max = 0.5) double more) {
        double[] values = amounts.stream().mapToDouble(Double::doubleValue).toArray();
        assertThat(PresentValue.of(stream(values), new DiscountRate(low + more)))
                .isLessThan(PresentValue.of(stream(values), new DiscountRate(low)));
    }

    @Property
    void staysSmoothWhereTheRateVanishes(@ForAll @Scale(14) @DoubleRange(min = -1e-9, max = 1e-9) double tiny) {
        assertThat(new DiscountRate(tiny).uniformPresentValue(5)).isCloseTo(5, within(1e-7));
        assertThat(new DiscountRate(0.03).escalatingPresentValue(0.03 + tiny, 5))
                .isCloseTo(5, within(1e-7));
    }

    @Test
    void refusesWhatIsNoRateOrTime() {
        assertThatIllegalArgumentException().isThrownBy(() -> new DiscountRate(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> new DiscountRate(Double.NaN));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DiscountRate.USUAL.uniformPresentValue(0))
                .withMessageContaining("years");
        assertThatIllegalArgumentException().isThrownBy(() -> new CashFlow(-1, 5));
    }

    static List<CashFlow> stream(double... endOfYear) {
        List<CashFlow> flows = new ArrayList<>();
        for (int i = 0; i < endOfYear.length; i++) {
            flows.add(new CashFlow(i + 1, endOfYear[i]));
        }
        return flows;
    }
}
