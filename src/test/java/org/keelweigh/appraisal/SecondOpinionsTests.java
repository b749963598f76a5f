package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SecondOpinionsTests {

    private static final Measured ALIKE = Samples.threeAlike();

    @Test
    void agreesWhenOneBoatIsBetterInEverything() {
        Perspective clear = Samples.perspective(ALIKE, new double[][] {{90, 80}, {60, 50}, {30, 20}});

        List<SecondOpinions.Voice> voices = SecondOpinions.of(ALIKE, clear);

        assertThat(voices).hasSize(3).allSatisfy(voice -> {
            assertThat(voice.sameLeader()).isTrue();
            assertThat(voice.order()).containsExactly(0, 1, 2);
            assertThat(voice.agreement()).hasValue(1);
            assertThat(voice.sentence()).contains("A first");
        });
    }

    /** Adding, A is ahead of B, 51 to 50; multiplying, 100 · 2 is far behind 50 · 50. */
    @Test
    void tellsWhyTheProductDiffersWhereOneMarkIsVeryPoor() {
        Perspective uneven = Samples.perspective(ALIKE, new double[][] {{100, 2}, {50, 50}, {40, 40}});

        SecondOpinions.Voice product = SecondOpinions.of(ALIKE, uneven).getLast();

        assertThat(product.method()).contains("Weighted product").contains("from 1 up");
        assertThat(product.sameLeader()).isFalse();
        assertThat(product.sentence())
                .contains("B before A")
                .contains("repair surprise")
                .contains("A has 2 of 100")
                .contains("B 50");
    }

    @Test
    void leavesOutWhatIsRuledOut() {
        Perspective ruled =
                Samples.perspective(ALIKE, new double[][] {{100, 100}, {50, 60}, {40, 30}}, true, false, false);

        assertThat(SecondOpinions.of(ALIKE, ruled))
                .allSatisfy(voice -> assertThat(voice.order()).containsExactly(1, 2));
    }

    @Test
    void asksNobodyAboutASingleBoat() {
        Perspective single =
                Samples.perspective(ALIKE, new double[][] {{100, 100}, {50, 60}, {40, 30}}, true, true, false);

        assertThat(SecondOpinions.of(ALIKE, single)).isEmpty();
    }
}
