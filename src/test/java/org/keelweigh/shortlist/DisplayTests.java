package org.keelweigh.shortlist;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DisplayTests {

    private final Display metric = new Display(UnitSystem.METRIC, "EUR");
    private final Display us = new Display(UnitSystem.US, "USD");

    // NIST SP 811 (2008), App. B: 1 in = 0.0254 m, 1 lb = 0.453 592 37 kg, both exact.
    @Test
    void writesFeetAndInchesWithoutEverSayingTwelveInches() {
        assertThat(us.length(3.9599)).isEqualTo("13 ft 0 in");
        assertThat(us.length(3.81)).isEqualTo("12 ft 6 in");
    }

    @Test
    void writesMassesInTheUnitsPeopleRead() {
        assertThat(us.mass(24.94758035)).isEqualTo("55 lb");
        assertThat(metric.mass(24.94758035)).isEqualTo("24.9 kg");
    }

    @Test
    void writesSmallPricesToTheHundredth() {
        assertThat(us.fineMoney(0.32)).isEqualTo("$0.32");
        assertThat(us.fineMoney(9)).isEqualTo("$9");
        assertThat(us.fineMoney(12.5)).isEqualTo("$13");
        assertThat(us.fineMoney(-0.001)).isEqualTo("$0.00");
    }

    @Test
    void writesWhatAWayCosts() {
        assertThat(metric.moneyByWay(0.5)).isEqualTo("€0.50 a km");
        assertThat(us.moneyByWay(0.5)).isEqualTo("$0.80 a mile");
    }

    @Test
    void writesTheSpeedOfWaterFinerThanThatOfCars() {
        assertThat(metric.speed(1.5)).isEqualTo("5.4 km/h");
        assertThat(metric.speed(80 / 3.6)).isEqualTo("80 km/h");
        assertThat(us.speed(80 / 3.6)).isEqualTo("50 mph");
    }

    @Test
    void writesMoneyWithItsSignOrCode() {
        assertThat(us.money(1234.5)).isEqualTo("$1,235");
        assertThat(metric.money(-20)).isEqualTo("−€20");
        assertThat(new Display(UnitSystem.METRIC, "CHF").money(900)).isEqualTo("900 CHF");
        assertThat(us.money(-0.2)).isEqualTo("$0");
    }

    @Test
    void doesNotRoundASmallChanceDownToNothing() {
        assertThat(metric.percent(0.001)).isEqualTo("under 1 %");
        assertThat(metric.percent(0)).isEqualTo("0 %");
    }
}
