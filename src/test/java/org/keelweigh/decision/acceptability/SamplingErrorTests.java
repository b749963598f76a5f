package org.keelweigh.decision.acceptability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SamplingErrorTests {

    /** √(p(1−p)/n). */
    @Test
    void givesTheErrorOfAShare() {
        assertThat(SamplingError.ofShare(0.5, 10_000)).isCloseTo(0.005, within(1e-12));
        assertThat(SamplingError.ofShare(0.2, 10_000)).isCloseTo(0.004, within(1e-12));
        assertThat(SamplingError.ofShare(0.2, 40_000)).isCloseTo(0.002, within(1e-12));
    }

    /** T. Tervonen &amp; R. Lahdelma 2007: 9 604 samples for one point at 95 %. */
    @Test
    void givesTheSamplesForAHalfWidth() {
        assertThat(SamplingError.samplesFor(0.5, 0.01)).isEqualTo(9_604);
        assertThat(SamplingError.samplesFor(0.2, 0.01)).isEqualTo(6_147);
    }

    @Test
    void rejectsAShareAboveOne() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SamplingError.ofShare(1.2, 10))
                .withMessageContaining("share must be 0 to 1");
    }
}
