package org.keelweigh.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class AirLossTests {

    /** 1 psi = 6894.757 Pa (exact factor of the avoirdupois pound, the inch and standard gravity, rounded). */
    private static final double PSI_PA = 6_894.757;

    private static final double ZERO_CELSIUS_K = 273;
    private static final double ATMOSPHERE_PA = 14.7 * PSI_PA;

    // Worked by hand: (13.6 + 14.7) · 297/287 - 14.7 = 14.586 psi, which is 2.8 % below 15.0 psi.
    @Test
    void takesOutTheCoolerNight() {
        double loss =
                AirLoss.share(15.0 * PSI_PA, ZERO_CELSIUS_K + 24, 13.6 * PSI_PA, ZERO_CELSIUS_K + 14, ATMOSPHERE_PA);
        assertThat(loss).isCloseTo(0.028, within(0.0005));
        assertThat(AirLoss.outcomeAfterDay(loss)).isEqualTo(Outcome.FINE);
        double uncorrected = 1 - 13.6 / 15.0;
        assertThat(AirLoss.outcomeAfterDay(uncorrected)).isEqualTo(Outcome.MINOR);
    }

    // Worked by hand: (8.46 + 14.7) · 297/289 - 14.7 = 9.101 psi of 10.0 psi.
    @Test
    void findsTheMinorLossBehindAnAlarmingReading() {
        double loss =
                AirLoss.share(10.0 * PSI_PA, ZERO_CELSIUS_K + 24, 8.46 * PSI_PA, ZERO_CELSIUS_K + 16, ATMOSPHERE_PA);
        assertThat(loss).isCloseTo(0.090, within(0.001));
        assertThat(AirLoss.outcomeAfterDay(loss)).isEqualTo(Outcome.MINOR);
    }

    @Test
    void gradesTwoHoursMoreStrictlyThanADay() {
        assertThat(AirLoss.outcomeAfterTwoHours(0.02)).isEqualTo(Outcome.MINOR);
        assertThat(AirLoss.outcomeAfterTwoHours(0.05)).isEqualTo(Outcome.MAJOR);
        assertThat(AirLoss.outcomeAfterTwoHours(0.2)).isEqualTo(Outcome.STOP);
        assertThat(AirLoss.outcomeAfterDay(0.5)).isEqualTo(Outcome.STOP);
    }

    @Test
    void rejectsWhatNoGaugeShows() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirLoss.share(0, 290, 10, 290, AirLoss.STANDARD_ATMOSPHERE_PA))
                .withMessageContaining("above 0 pascals");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirLoss.share(100_000, 290, -1, 290, AirLoss.STANDARD_ATMOSPHERE_PA))
                .withMessageContaining("-1");
        assertThatIllegalArgumentException().isThrownBy(() -> AirLoss.outcomeAfterDay(Double.NaN));
    }

    @Property
    void isPlainShareWhenNothingCooled(
            @ForAll @DoubleRange(min = 1_000, max = 150_000) double firstPa,
            @ForAll @DoubleRange(min = 0, max = 1) double kept,
            @ForAll @DoubleRange(min = 260, max = 320) double kelvin) {
        double loss = AirLoss.share(firstPa, kelvin, firstPa * kept, kelvin, AirLoss.STANDARD_ATMOSPHERE_PA);
        assertThat(loss).isCloseTo(1 - kept, within(1e-9));
    }
}
