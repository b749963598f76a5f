package org.keelweigh.boat.identity;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Year;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class IdentityCheckTests {

    private static final Year TODAY = Year.of(2026);

    // which boats need a number: 33 CFR 181.23; paddleboards, the directive and 1972 from secondary sources
    @ParameterizedTest
    @CsvSource({
        "MISSING,REQUIRED,RULED_OUT",
        "MISSING,UNCERTAIN,ASK_FOR_PAPERS",
        "MISSING,PADDLEBOARD_WAIVED,NOTHING_TO_CHECK",
        "MISSING,OUTSIDE_DIRECTIVE,NOTHING_TO_CHECK",
        "MISSING,BEFORE_RULES,NOTHING_TO_CHECK",
        "UNREADABLE,REQUIRED,ASK_FOR_PAPERS",
        "UNREADABLE,UNCERTAIN,ASK_FOR_PAPERS",
        "UNREADABLE,PADDLEBOARD_WAIVED,ASK_FOR_PAPERS",
        "TAMPERED,REQUIRED,RULED_OUT",
        "TAMPERED,OUTSIDE_DIRECTIVE,RULED_OUT",
        "NOT_REQUIRED,REQUIRED,ASK_FOR_PAPERS",
        "NOT_REQUIRED,UNCERTAIN,NOTHING_TO_CHECK",
        "NOT_REQUIRED,PADDLEBOARD_WAIVED,NOTHING_TO_CHECK",
        "NOT_LOOKED,REQUIRED,NOT_LOOKED",
        "READ,REQUIRED,NOT_LOOKED"
    })
    void judgesAPlateWithoutCharacters(PlateState plate, NumberDuty duty, IdentityVerdict verdict) {
        IdentityCheck check = IdentityCheck.compare(plate, null, 2020, duty, TODAY);
        assertThat(check.verdict()).isEqualTo(verdict);
        assertThat(check.reasons()).isNotEmpty().allMatch(sentence -> sentence.endsWith("."));
        assertThat(check.settles()).isNotEmpty();
        assertThat(check.reading()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "XYZ9A8B7H324,2024,IN_ORDER", // model year
        "XYZ9A8B7H324,2023,IN_ORDER", // year of building
        "XYZ9A8B7H324,2022,ASK_FOR_PAPERS",
        "XYZ9A8B7H324,2025,ASK_FOR_PAPERS",
        "XYZ9A8B7H324,,IN_ORDER",
        "ABC123451272,1972,IN_ORDER",
        "ABC123451272,1973,IN_ORDER",
        "ABC123451272,1975,ASK_FOR_PAPERS",
        "ABC12345M82H,1982,IN_ORDER",
        "ABC12345M82H,1981,ASK_FOR_PAPERS",
        "ABC12345A788,1988,ASK_FOR_PAPERS", // unusual date
        "ABC12345A830,2030,ASK_FOR_PAPERS", // still to come
        "ABC1234OA787,1987,ASK_FOR_PAPERS" // format does not fit
    })
    void comparesTheNumberWithTheListing(String number, Integer claimed, IdentityVerdict verdict) {
        IdentityCheck check = IdentityCheck.compare(PlateState.READ, number, claimed, NumberDuty.REQUIRED, TODAY);
        assertThat(check.verdict()).isEqualTo(verdict);
        assertThat(check.settles().isEmpty()).isEqualTo(verdict == IdentityVerdict.IN_ORDER);
        assertThat(check.reading()).isPresent();
    }

    @Test
    void saysThatTheFormatFitsAndNeverThatItIsGenuine() {
        IdentityCheck check = IdentityCheck.compare(PlateState.READ, "XYZ9A8B7H324", 2024, NumberDuty.REQUIRED, TODAY);
        assertThat(check.reasons().getFirst()).startsWith("The format fits");
        assertThat(String.join(" ", check.reasons())).doesNotContain("genuine");
    }

    @Test
    void namesTheReadingThatWouldFit() {
        IdentityCheck check = IdentityCheck.compare(PlateState.READ, "ABC1234OA787", 1987, NumberDuty.REQUIRED, TODAY);
        assertThat(check.settles()).anyMatch(sentence -> sentence.contains("ABC12340A787 would fit"));
    }

    @Test
    void readsTheListingsNumberBeforeAnybodyLooked() {
        assertThat(IdentityCheck.compare(PlateState.NOT_LOOKED, "XYZ9A8B7H324", 2024, NumberDuty.REQUIRED, TODAY))
                .satisfies(check -> {
                    assertThat(check.verdict()).isEqualTo(IdentityVerdict.NOT_LOOKED);
                    assertThat(check.settles()).isNotEmpty();
                });
        assertThat(IdentityCheck.compare(PlateState.NOT_LOOKED, "XYZ9A8B7H324", 2019, NumberDuty.REQUIRED, TODAY)
                        .verdict())
                .isEqualTo(IdentityVerdict.ASK_FOR_PAPERS);
    }

    @ParameterizedTest
    @EnumSource(NumberDuty.class)
    void rulesOutATamperedNumberOnAnyBoat(NumberDuty duty) {
        assertThat(IdentityCheck.compare(PlateState.TAMPERED, "XYZ9A8B7H324", 2024, duty, TODAY)
                        .verdict())
                .isEqualTo(IdentityVerdict.RULED_OUT);
    }
}
