package org.keelweigh.boat.identity;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Year;
import java.util.Locale;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class HullNumberPropertyTests {

    private static final Year TODAY = Year.of(2026);

    @Property(seed = "11")
    void readsBackWhatItWrites(@ForAll("numbers") HullNumber number) {
        assertThat(HullNumberReading.of(number.text(), TODAY))
                .isInstanceOfSatisfying(HullNumberReading.WellFormed.class, reading -> assertThat(reading.number())
                        .isEqualTo(number));
    }

    @Property(seed = "12")
    void ignoresCaseBlanksAndHyphens(
            @ForAll("numbers") HullNumber number, @ForAll @IntRange(min = 4, max = 11) int at) {
        String text = number.text().toLowerCase(Locale.ROOT);
        String untidy = " " + text.substring(0, at) + " - " + text.substring(at) + "\n";
        assertThat(HullNumberReading.of(untidy, TODAY))
                .isInstanceOfSatisfying(HullNumberReading.WellFormed.class, reading -> {
                    assertThat(reading.number()).isEqualTo(number);
                    assertThat(reading.normalised()).isNotEmpty();
                });
    }

    @Property(seed = "13")
    void findsAnOTypedForAZeroInTheSerial(@ForAll("numbers") HullNumber number, @ForAll @IntRange(max = 4) int at) {
        String serial = number.serial().substring(0, at) + "0" + number.serial().substring(at + 1);
        HullNumber meant = new HullNumber(number.country(), number.makerCode(), serial, number.dateMarks());
        String slip = meant.twelve().substring(0, 3 + at) + "O" + meant.twelve().substring(4 + at);
        String typed = meant.country().map(country -> country + "-" + slip).orElse(slip);
        assertThat(HullNumberReading.of(typed, TODAY))
                .isInstanceOfSatisfying(HullNumberReading.Malformed.class, reading -> {
                    assertThat(reading.position()).isEqualTo(4 + at);
                    assertThat(reading.suggestions())
                            .extracting(Suggestion::number)
                            .contains(meant);
                });
    }

    @Property(seed = "14")
    void neverFailsOnAnyText(@ForAll String anything) {
        switch (HullNumberReading.of(anything, TODAY)) {
            case HullNumberReading.WellFormed fits ->
                assertThat(fits.number().twelve()).hasSize(12);
            case HullNumberReading.Malformed malformed -> {
                assertThat(malformed.position()).isBetween(1, 13);
                assertThat(malformed.sentence()).isNotBlank();
            }
        }
    }

    @Property(seed = "15")
    void certifiesInAYearWithTheDigitOnThePlate(@ForAll("numbers") HullNumber number) {
        if (number.layout() == Layout.CURRENT) {
            assertThat(number.certificationYears())
                    .allMatch(year -> year % 10 == number.dateMarks().charAt(1) - '0')
                    .hasSizeLessThanOrEqualTo(1);
        }
        assertThat(number.month()).isBetween(1, 12);
    }

    @Provide
    Arbitrary<HullNumber> numbers() {
        Arbitrary<Optional<String>> country =
                Arbitraries.of("US", "GB", "CA", "FR", "DE").optional(0.4);
        Arbitrary<String> maker =
                Arbitraries.strings().withChars(Layout.LETTERS).ofLength(3);
        Arbitrary<String> serial =
                Arbitraries.strings().withChars(Layout.SERIAL).ofLength(5);
        return Combinators.combine(country, maker, serial, dateMarks()).as(HullNumber::new);
    }

    private static Arbitrary<String> dateMarks() {
        Arbitrary<String> month = Arbitraries.strings().withChars(Layout.MONTHS).ofLength(1);
        Arbitrary<Integer> pair = Arbitraries.integers().between(0, 99);
        Arbitrary<String> present = Combinators.combine(
                        month, Arbitraries.integers().between(0, 9), pair)
                .as((letter, digit, year) -> letter + digit + String.format("%02d", year));
        Arbitrary<String> straight = Combinators.combine(Arbitraries.integers().between(1, 12), pair)
                .as((number, year) -> String.format("%02d%02d", number, year));
        Arbitrary<String> lettered =
                Combinators.combine(pair, month).as((year, letter) -> String.format("M%02d", year) + letter);
        return Arbitraries.oneOf(present, straight, lettered);
    }
}
