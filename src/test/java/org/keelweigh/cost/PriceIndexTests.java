package org.keelweigh.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PriceIndexTests {

    /**
     * First row: BLS, Using the Consumer Price Index for Escalation, 1989, p. 5; second: the later BLS example; third:
     * Alaska Department of Labor, Anchorage 2012. All print one decimal.
     */
    @ParameterizedTest
    @CsvSource({"113.8, 118.5, 4.130053, 4.1", "129.9, 136.0, 4.69592, 4.7", "201.427, 205.916, 2.228599, 2.2"})
    void givesThePublishedChange(double earlier, double later, double exact, double printed) {
        assertThat(new PriceIndex(earlier, later).percentChange())
                .isCloseTo(exact, within(1e-6))
                .isCloseTo(printed, within(0.05));
    }

    @Test
    void carriesAPriceAlong() {
        assertThat(new PriceIndex(100, 125).update(40)).isEqualTo(50);
    }

    @Test
    void refusesReadingsThatAreNotPositive() {
        assertThatIllegalArgumentException().isThrownBy(() -> new PriceIndex(0, 100));
    }
}
