package org.keelweigh.ui.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.UnitSystem;

class QuantityTests {

    private static final Display METRIC = new Display(UnitSystem.METRIC, "EUR");
    private static final Display US = new Display(UnitSystem.US, "USD");

    // Exact factors: NIST SP 811 (2008), App. B; international yard and pound agreement, 1959.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "LENGTH  | 12'6\"     | 3.81",
                "LENGTH  | 12 ft 6 in | 3.81",
                "LENGTH  | 12ft 6     | 3.81",
                "LENGTH  | 12.5       | 3.81",
                "LENGTH  | 3,81 m     | 3.81",
                "LENGTH  | 381 cm     | 3.81",
                "BREADTH | 30         | 0.762",
                "MASS    | 55 lbs     | 24.94758035",
                "MASS    | 25 kg      | 25",
                "TRAVEL  | 2          | 3218.688",
                "FORCE   | 100 N      | 100",
                "PERCENT | 6          | 0.06",
                "MONEY   | 1,250      | 1250",
                "MONEY   | 1.250,50   | 1250.5",
                "MONEY   | 1,250.50   | 1250.5"
            })
    void readsWhatPeopleType(Quantity quantity, String text, double si) {
        assertThat(quantity.parse(text, US)).isCloseTo(si, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "long", "12 stones", "12 kg 3", "1 2 3", "--4", "12 ft 6 in 3", "NaN", "1e400"})
    void saysHowToWriteWhatItCannotRead(String text) {
        assertThatThrownBy(() -> Quantity.LENGTH.parse(text, METRIC))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("write it like 12.5 m");
    }

    @Property
    void bringsBackUnchangedWhatWasTypedInEitherUnits(@ForAll @DoubleRange(min = 0.01, max = 999) double typed) {
        double rounded = Math.round(typed * 100) / 100.0;
        for (Quantity quantity : new Quantity[] {Quantity.MASS, Quantity.BREADTH, Quantity.TRAVEL, Quantity.FORCE}) {
            for (Display display : new Display[] {METRIC, US}) {
                double si = quantity.parse(String.valueOf(rounded), display);
                String shown = quantity.edit(si, display);
                assertThat(Double.parseDouble(shown)).isEqualTo(rounded);
                assertThat(quantity.parse(shown, display)).isEqualTo(si);
            }
        }
    }

    @Property
    void neverWritesTwelveInches(@ForAll @DoubleRange(min = 0.5, max = 12) double metres) {
        assertThat(Quantity.LENGTH.edit(metres, US)).doesNotContain(" 12 in");
        assertThat(Quantity.LENGTH.parse(Quantity.LENGTH.edit(metres, US), US)).isCloseTo(metres, within(1e-5));
    }
}
