package org.keelweigh.decision.information;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** H. Raiffa &amp; R. Schlaifer 1961, table of the unit normal loss; further digits worked out anew. */
class NormalInformationTests {

    @ParameterizedTest
    @CsvSource({
        "0, 0.398942",
        "0.25, 0.286345",
        "0.5, 0.197797",
        "1, 0.083315",
        "1.5, 0.029307",
        "2, 0.008491",
        "2.5, 0.002004"
    })
    void agreesWithTheTable(double z, double loss) {
        assertThat(NormalInformation.unitLoss(z)).isCloseTo(loss, within(1e-6));
        assertThat(NormalInformation.unitLoss(-z)).isCloseTo(loss + z, within(1e-6));
    }

    /** Two independent facts with sd 40 and 30, together 50, and a lead of 30; worked out anew. */
    @Test
    void valuesPartsAndWhole() {
        assertThat(NormalInformation.gain(30, 50)).isCloseTo(8.433637, within(1e-6));
        assertThat(NormalInformation.gain(-30, 40)).isCloseTo(5.246677, within(1e-6));
        assertThat(NormalInformation.gain(30, 30)).isCloseTo(2.499464, within(1e-6));
    }

    @Property(tries = 300)
    void ordersMeasuringKnowingAndKnowingMore(
            @ForAll @DoubleRange(min = -500, max = 500) double lead,
            @ForAll @DoubleRange(min = 0, max = 300) double sd,
            @ForAll @DoubleRange(min = 0, max = 300) double rest,
            @ForAll @DoubleRange(min = 0, max = 300) double error) {
        double evsi = NormalInformation.gain(lead, NormalInformation.resolvedSd(sd, error, 2));
        double evppi = NormalInformation.gain(lead, sd);
        assertThat(evsi).isGreaterThanOrEqualTo(0);
        assertThat(evppi).isGreaterThanOrEqualTo(evsi - 1e-9);
        assertThat(NormalInformation.gain(lead, Math.hypot(sd, rest))).isGreaterThanOrEqualTo(evppi - 1e-9);
    }

    @Test
    void resolvesAllWithoutErrorAndLittleWithMuch() {
        assertThat(NormalInformation.resolvedSd(40, 0, 1)).isEqualTo(40);
        assertThat(NormalInformation.resolvedSd(40, 30, 1)).isCloseTo(32, within(1e-12));
        assertThat(NormalInformation.resolvedSd(0, 0, 1)).isZero();
    }

    @Test
    void rejectsNegativeSpread() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NormalInformation.gain(1, -1))
                .withMessageContaining("sd must be non-negative");
    }
}
