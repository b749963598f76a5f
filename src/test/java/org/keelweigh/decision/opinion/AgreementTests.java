package org.keelweigh.decision.opinion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class AgreementTests {

    @Test
    void isOneForTheSameOrderAndMinusOneForTheReverse() {
        assertThat(Agreement.between(List.of(1, 2, 3), List.of(1, 2, 3)).tauB()).hasValue(1);
        assertThat(Agreement.between(List.of(1, 2, 3), List.of(3, 2, 1)).tauB()).hasValue(-1);
    }

    // by hand: 6 pairs; untied in the first 5, in the second 6; 4 agree, 1 disagrees
    @Test
    void correctsForTies() {
        Agreement agreement = Agreement.between(List.of(1, 2, 2, 4), List.of(2, 1, 3, 4));
        assertThat(agreement.tauB().getAsDouble()).isCloseTo(3 / Math.sqrt(30), within(1e-12));
        assertThat(agreement.sameLeader()).isFalse();
    }

    @Test
    void takesASharedFirstPlaceForTheSameLeader() {
        assertThat(Agreement.between(List.of(1, 1, 3), List.of(2, 1, 3)).sameLeader())
                .isTrue();
    }

    @Test
    void isUndefinedWhenEverythingTies() {
        assertThat(Agreement.between(List.of(1, 1), List.of(1, 2)).tauB()).isEmpty();
    }

    @Test
    void rejectsRankingsOfDifferentLength() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Agreement.between(List.of(1), List.of(1, 2)))
                .withMessageContaining("1 ranks");
    }
}
