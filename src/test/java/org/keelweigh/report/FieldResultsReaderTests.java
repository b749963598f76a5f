package org.keelweigh.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.Outcome;

class FieldResultsReaderTests {

    private static final FieldResultsReader READER = new FieldResultsReader(FieldCases.INSPECTION);
    private static final String TAG =
            SheetTag.of(FieldCases.BOAT, 2, FieldCases.INSPECTION.checks()).hex();

    @Test
    void readsWhatWasFound() {
        FieldResults.Reading reading = read(file(
                "{\"check\":\"hull-crack\",\"outcome\":\"major\",\"measured\":4.5,\"note\":\" by the <b>seat</b> \"}"));

        assertThat(reading).isInstanceOf(FieldResults.Reading.Readable.class);
        FieldResults.BoatResults boat =
                ((FieldResults.Reading.Readable) reading).results().boats().getFirst();
        assertThat(boat.version()).isEqualTo(2);
        assertThat(boat.findings())
                .containsExactly(
                        new Finding("hull-crack", Outcome.MAJOR, Method.TOUCHED, 4.5, "by the <b>seat</b>", null));
    }

    @Test
    void refusesTenThousandChecks() {
        String one = "{\"check\":\"hull-crack\",\"outcome\":\"major\"}";

        assertThat(sentence(file((one + ",").repeat(9_999) + one)))
                .isEqualTo("These results hold 10000 findings on one boat; a sheet has at most "
                        + FieldCases.INSPECTION.checks().size() + " checks.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"check":"hull-crack","outcome":"major"},{"check":"hull-crack","outcome":"fine"} | twice
            {"check":"no-such-check","outcome":"major"}                                      | does not exist
            {"check":"hull-crack","outcome":"splendid"}                                      | none that exists
            {"check":"hull-crack","outcome":"major","measured":"much"}                       | not a number
            {"check":"hull-crack","outcome":"major","measured":1e300}                        | not a number
            5                                                                                | does not exist
            """)
    void refusesFindingsThatCannotBe(String findings, String words) {
        assertThat(sentence(file(findings))).contains(words);
    }

    @Test
    void refusesNotesWithoutEnd() {
        assertThat(sentence(
                        file("{\"check\":\"hull-crack\",\"outcome\":\"major\",\"note\":\"" + "x".repeat(2001) + "\"}")))
                .contains("longer than 2000");
    }

    @Test
    void refusesAnotherSheet() {
        assertThat(sentence(file("").replace(TAG, "00000000"))).contains("another sheet");
        assertThat(sentence(file("").replace("\"version\":2", "\"version\":3"))).contains("another sheet");
        assertThat(sentence(file("").replace(FieldCases.BOAT.toString(), "6f2c1f0e-0000-4000-8000-0000000000ff")))
                .contains("not on this shortlist");
    }

    @Test
    void refusesAStateThatHasNotBeenYet() {
        String tag =
                SheetTag.of(FieldCases.BOAT, 99, FieldCases.INSPECTION.checks()).hex();

        assertThat(sentence(file("").replace(TAG, tag).replace("\"version\":2", "\"version\":99")))
                .contains("another sheet");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "null", "[]", "{}", "<html>", "{\"format\":\"keelweigh-shortlist\"}", "\"text\""})
    void refusesOtherFiles(String text) {
        assertThat(sentence(text)).contains("not a file of field results");
    }

    @Test
    void refusesDeepNests() {
        assertThat(sentence("[".repeat(100_000))).contains("cannot be read");
    }

    @Test
    void refusesLargeFiles() {
        assertThat(sentence(" ".repeat(FieldResultsReader.MOST_BYTES + 1))).contains("larger");
    }

    private static String file(String findings) {
        return "{\"format\":\"keelweigh-field-results\",\"formatVersion\":1,\"sheet\":\"" + TAG
                + "\",\"boats\":[{\"boat\":\"" + FieldCases.BOAT + "\",\"version\":2,\"tag\":\"" + TAG
                + "\",\"findings\":[" + findings + "]}]}";
    }

    private static FieldResults.Reading read(String text) {
        return READER.read(text.getBytes(StandardCharsets.UTF_8), FieldCases.facts(FieldCases.boat(2)));
    }

    private static String sentence(String text) {
        FieldResults.Reading reading = read(text);
        assertThat(reading).isInstanceOf(FieldResults.Reading.Refused.class);
        return ((FieldResults.Reading.Refused) reading).sentence();
    }
}
