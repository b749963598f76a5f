package org.keelweigh.boat.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Year;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HullNumberReadingTests {

    private static final Year TODAY = Year.of(2026);

    @ParameterizedTest
    @CsvFileSource(resources = "/oracle/hull-number.csv", useHeadersInDisplayName = true)
    void agreesWithTheTable(
            String kind,
            @Nullable String number,
            @Nullable HullNumberFormat format,
            @Nullable YearMonth certified,
            @Nullable Integer modelYear,
            @Nullable Integer position,
            @Nullable String why) {
        HullNumberReading reading = HullNumberReading.of(number == null ? "" : number, TODAY);
        switch (reading) {
            case HullNumberReading.Malformed malformed -> {
                assertThat(kind).isEqualTo("invalid");
                assertThat(malformed.position()).isEqualTo(position);
                assertThat(malformed.sentence()).endsWith(".");
            }
            case HullNumberReading.WellFormed fits -> {
                assertThat(fits.number().format()).isEqualTo(format);
                assertThat(fits.number().certified()).isEqualTo(Optional.ofNullable(certified));
                assertThat(fits.number().modelYear()).isEqualTo(Optional.ofNullable(modelYear));
                assertThat(fits.observations().stream().anyMatch(o -> o.weight() == Observation.Weight.UNUSUAL))
                        .as("unusual: %s", fits.observations())
                        .isEqualTo(kind.equals("unusual"));
                assertThat(fits.impossible()).isFalse();
            }
        }
    }

    // 33 CFR 181.25(c): January is A, December is L; model-year layout (secondary): August is A, July is L
    @ParameterizedTest
    @CsvSource({
        "1,A,F", "2,B,G", "3,C,H", "4,D,I", "5,E,J", "6,F,K", "7,G,L", "8,H,A", "9,I,B", "10,J,C", "11,K,D", "12,L,E"
    })
    void readsEveryMonthInEveryLayout(int month, String present, String modelYearLetter) {
        for (int year = 1984; year <= 2026; year++) {
            String digits = String.format("%d%02d", year % 10, year % 100);
            HullNumber current = fits("ABC12345" + present + digits).number();
            assertThat(current.certified()).contains(YearMonth.of(year, month));
            HullNumber international = fits("GB-ABC12345" + present + digits).number();
            assertThat(international.certified()).contains(YearMonth.of(year, month));
            assertThat(international.country()).contains("GB");
            assertThat(international.format()).isEqualTo(HullNumberFormat.INTERNATIONAL);
        }
        for (int year = 1973; year <= 1984; year++) {
            HullNumber straight =
                    fits(String.format("ABC12345%02d%02d", month, year - 1900)).number();
            assertThat(straight.certified()).contains(YearMonth.of(year, month));
            assertThat(straight.format()).isEqualTo(HullNumberFormat.STRAIGHT_YEAR);
            HullNumber letter =
                    fits("ABC12345M" + (year - 1900) + modelYearLetter).number();
            assertThat(letter.certified()).contains(YearMonth.of(month >= 8 ? year - 1 : year, month));
            assertThat(letter.modelYear()).contains(year);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "abc12345a787",
                "ABC 12345 A787",
                "ABC-12345-A787",
                " abc-12345 a7-87 ",
                "ABC\u201012345\u2013A787",
                "ABC\u00a012345A787",
                "HIN: ABC12345A787",
                "ABC12345A787\u0000"
            })
    void tellsWhatWasChangedBeforeReading(String typed) {
        HullNumberReading.WellFormed reading = fits(typed);
        assertThat(reading.number().text()).isEqualTo("ABC12345A787");
        assertThat(reading.normalised()).isNotEmpty();
    }

    @Test
    void changesNothingOnAPlateWrittenByTheRule() {
        assertThat(fits("ABC12345A787").normalised()).isEmpty();
    }

    @Test
    void setsCountryLettersApart() {
        assertThat(fits("US-ABC12345A787").number().twelve()).isEqualTo("ABC12345A787");
        assertThat(fits("US-ABC12345A787").normalised())
                .singleElement()
                .asString()
                .contains("US");
        assertThat(fits("USABC12345A787").number().text()).isEqualTo("US-ABC12345A787");
        assertThat(fits("US-ABC12345M82H").number().format()).isEqualTo(HullNumberFormat.MODEL_YEAR_LETTER);
    }

    @Test
    void doubtsCountryLettersThatAreNoCountry() {
        assertThat(fits("XQ-ABC12345A787").observations())
                .anyMatch(o ->
                        o.weight() == Observation.Weight.UNUSUAL && o.sentence().contains("XQ"));
    }

    @Test
    void allowsDigitsInMakerCodesOfOtherCountriesOnly() {
        assertThat(fits("FR-AB112345A787").number().makerCode()).isEqualTo("AB1");
        assertThat(malformed("US-AB112345A787").position()).isEqualTo(3);
    }

    @Test
    void refusesLettersOfOtherScripts() {
        assertThat(malformed("\u0410BC12345A787").position()).isEqualTo(1);
        assertThat(malformed("ABC1234\u0665A787").position()).isEqualTo(8);
        assertThat(malformed("\u0131BC12345A787").position()).isEqualTo(1);
    }

    @Test
    void refusesHugeTextInASentence() {
        HullNumberReading.Malformed reading = malformed("A".repeat(200_000));
        assertThat(reading.sentence()).contains("too long");
        assertThat(reading.cleaned()).isEmpty();
    }

    // O, I and Q are barred from the serial by 33 CFR 181.25(b)
    @ParameterizedTest
    @CsvSource({
        "ABC1234OA787,ABC12340A787",
        "ABC1234QA787,ABC12340A787",
        "ABC12I45A787,ABC12145A787",
        "ABC12345A7B7,ABC12345A787",
        "ABC12345AS85,ABC12345A585",
        "ABC12345AZ92,ABC12345A292",
        "A8C12345A787,ABC12345A787",
        "5BC12345A787,SBC12345A787",
        "A2C12345A787,AZC12345A787",
        "1BC12345A787,IBC12345A787",
        "ABC12345O784,ABC123450784",
        "ABC123458787,ABC12345B787",
        "ABC12345M821,ABC12345M82I",
        "ABC12345MB2H,ABC12345M82H",
        "ABC1Z345QI7B,ABC1Z3450178"
    })
    void suggestsLookAlikes(String typed, String meant) {
        assertThat(malformed(typed).suggestions()).anySatisfy(each -> {
            assertThat(each.number().twelve()).isEqualTo(meant);
            assertThat(each.explanation()).contains("looks like").endsWith(".");
        });
    }

    @Test
    void offersBothLettersForAZeroInTheMakerCode() {
        assertThat(malformed("A0C12345A787").suggestions())
                .extracting(each -> each.number().twelve())
                .containsExactlyInAnyOrder("AOC12345A787", "AQC12345A787");
    }

    @Test
    void suggestsNothingForOtherText() {
        assertThat(malformed("????????????").suggestions()).isEmpty();
        assertThat(malformed("OQIOQIOQIOQI").suggestions()).isEmpty();
    }

    @Test
    void tellsDatesStillToCome() {
        assertThat(fits("ABC12345A727").observations())
                .anyMatch(o -> o.weight() == Observation.Weight.IMPOSSIBLE
                        && o.sentence().contains("2027"));
        assertThat(fits("ABC12345A627").impossible()).isFalse();
        assertThat(fits("ABC12345A830").impossible()).isTrue();
    }

    @Test
    void readsNinthCharacterIAsOneWhenTheDateIsImpossible() {
        // I272 would be September of 2072; 1272 is December 1972 in the straight-year layout
        HullNumberReading.WellFormed reading = fits("ABC12345I272");
        assertThat(reading.impossible()).isTrue();
        assertThat(reading.suggestions())
                .extracting(each -> each.number().twelve())
                .contains("ABC123451272");
    }

    @Test
    void leavesBothCenturiesOpenBeforeTheRules() {
        assertThat(fits("ABC123450108").number().certificationYears()).containsExactly(1908, 2008);
    }

    @Test
    void knowsTheHomeBuiltCode() {
        assertThat(fits("NCZ00123F808").observations()).singleElement().satisfies(o -> assertThat(o.weight())
                .isEqualTo(Observation.Weight.NOTE));
    }

    @Test
    void refusesPartsThatDoNotFit() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new HullNumber(Optional.empty(), "ABC", "1234O", "A787"))
                .withMessageContaining("Character 8");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new HullNumber(Optional.of("USA"), "ABC", "12345", "A787"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new HullNumber(Optional.empty(), "ABCD", "12345", "A787"));
    }

    @Test
    void putsTheGravestObservationFirst() {
        List<Observation> observations = fits("XQ-NCZ00123F835").observations();
        assertThat(observations.getFirst().weight()).isEqualTo(Observation.Weight.IMPOSSIBLE);
        assertThat(observations.getLast().weight()).isEqualTo(Observation.Weight.NOTE);
    }

    private static HullNumberReading.WellFormed fits(String typed) {
        HullNumberReading reading = HullNumberReading.of(typed, TODAY);
        assertThat(reading).isInstanceOf(HullNumberReading.WellFormed.class);
        return (HullNumberReading.WellFormed) reading;
    }

    private static HullNumberReading.Malformed malformed(String typed) {
        HullNumberReading reading = HullNumberReading.of(typed, TODAY);
        assertThat(reading).isInstanceOf(HullNumberReading.Malformed.class);
        return (HullNumberReading.Malformed) reading;
    }
}
