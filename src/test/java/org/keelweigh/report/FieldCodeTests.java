package org.keelweigh.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Outcome;
import org.keelweigh.shortlist.Candidate;

class FieldCodeTests {

    private static final FieldCode CODE = new FieldCode(FieldCases.INSPECTION);

    /** The published check value of CRC-16/CCITT-FALSE for the nine digits; from memory. */
    @Test
    void sumsAsPublished() {
        assertThat(FieldCode.checkSum("123456789".getBytes(StandardCharsets.US_ASCII), 9))
                .isEqualTo(0x29B1);
    }

    @Test
    void readsBackWhatItWrote() {
        Random random = new Random(7);
        for (int round = 0; round < 200; round++) {
            Candidate boat = FieldCases.boat(round % 5);
            List<Finding> findings = new ArrayList<>();
            for (Check check : FieldCases.INSPECTION.checks()) {
                if (random.nextInt(4) == 0) {
                    Outcome outcome = Outcome.values()[random.nextInt(Outcome.values().length)];
                    findings.add(new Finding(check.id(), outcome, FieldCode.method(check), null, null, null));
                }
            }
            FieldResults.BoatResults read = read(CODE.write(boat, findings), FieldCases.boat(6));

            assertThat(read.findings()).isEqualTo(findings);
            assertThat(read.version()).isEqualTo(boat.version());
        }
    }

    @Test
    void forgivesWhatHandsDoToACode() {
        String code = CODE.write(FieldCases.boat(1), List.of(Finding.of("hull-crack", Outcome.MAJOR)));

        String typed = code.toLowerCase().replace("-", " ").replace('0', 'o').replace('1', 'l');

        assertThat(read(typed, FieldCases.boat(1)).findings()).containsExactly(Finding.of("hull-crack", Outcome.MAJOR));
    }

    @Test
    void noticesEveryWrongCharacter() {
        Candidate boat = FieldCases.boat(1);
        String code = CODE.write(boat, List.of(Finding.of("hull-crack", Outcome.MAJOR)));
        // The last character also holds bits that fill it up and carry nothing.
        for (int i = 0; i < code.length() - 1; i++) {
            if (code.charAt(i) != '-') {
                char other = code.charAt(i) == '7' ? '8' : '7';
                String wrong = code.substring(0, i) + other + code.substring(i + 1);
                assertThat(CODE.read(wrong, boat)).as(wrong).isInstanceOf(FieldResults.Reading.Refused.class);
            }
        }
    }

    @Test
    void refusesTheCodeOfAnotherBoat() {
        String code = CODE.write(FieldCases.boat(9), List.of(Finding.of("hull-crack", Outcome.MAJOR)));

        assertThat(sentence(code, FieldCases.boat(8))).contains("another boat's sheet");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "7", "AAAAA-AAAAA-AAAAA", "<script>alert(1)</script>", "ÄÖÜ", "00000-00000-00000"})
    void refusesWhatIsNoCode(String text) {
        assertThat(sentence(text, FieldCases.boat(1))).endsWith("compare it with the sheet.");
    }

    @Test
    void refusesEndlessCodes() {
        assertThat(sentence("A".repeat(100_000), FieldCases.boat(1))).contains("groups of five");
    }

    private static FieldResults.BoatResults read(String code, Candidate boat) {
        FieldResults.Reading reading = CODE.read(code, boat);
        assertThat(reading).isInstanceOf(FieldResults.Reading.Readable.class);
        return ((FieldResults.Reading.Readable) reading).results().boats().getFirst();
    }

    private static String sentence(String code, Candidate boat) {
        FieldResults.Reading reading = CODE.read(code, boat);
        assertThat(reading).isInstanceOf(FieldResults.Reading.Refused.class);
        return ((FieldResults.Reading.Refused) reading).sentence();
    }
}
