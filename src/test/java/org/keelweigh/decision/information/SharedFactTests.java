package org.keelweigh.decision.information;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * One normal fact with effects +0.5 and −0.5 on two alternatives: their difference is normal with the fact's own spread,
 * so the closed form is the oracle.
 */
class SharedFactTests {

    private static final int SAMPLES = 20_000;
    private static final double LEAD = 20;
    private static final double SD = 60;

    private final double[] fact = new double[SAMPLES];
    private final double[][] values = new double[2][SAMPLES];

    SharedFactTests() {
        Random random = new Random(17);
        for (int s = 0; s < SAMPLES; s++) {
            fact[s] = SD * random.nextGaussian();
            values[0][s] = 500 + LEAD + 0.5 * fact[s] + 80 * random.nextGaussian();
            values[1][s] = 500 - 0.5 * fact[s] + 80 * random.nextGaussian();
        }
    }

    @Test
    void agreesWithTheClosedForm() {
        double exact = NormalInformation.gain(LEAD, SD);
        SharedFact.Estimate cubic = SharedFact.byCubic(values, fact);
        SharedFact.Estimate bins = SharedFact.byBins(values, fact, 1_000);
        // Standard error of the mean regret plus that of the mean difference, 113/√20000 = 0.8, times about one half
        double error = Math.hypot(cubic.standardError(), 0.4);
        assertThat(cubic.value()).isCloseTo(exact, within(3.5 * error));
        assertThat(bins.value()).isCloseTo(exact, within(3.5 * error));
        assertThat(cubic.standardError()).isBetween(0.05, 1.0);
    }

    /** Oracle only: an outer sample of the fact, for each an inner sample of everything else. */
    @Test
    void agreesWithNestedSampling() {
        Random random = new Random(23);
        int outer = 1_000;
        int inner = 1_000;
        double sum = 0;
        for (int i = 0; i < outer; i++) {
            double shared = SD * random.nextGaussian();
            double difference = 0;
            for (int j = 0; j < inner; j++) {
                difference += LEAD + shared + 80 * (random.nextGaussian() - random.nextGaussian());
            }
            sum += Math.max(0, -difference / inner);
        }
        // The regret's standard deviation is about 27 over 1 000 draws of the fact: 0.9
        assertThat(sum / outer).isCloseTo(SharedFact.byCubic(values, fact).value(), within(3.5 * 1.0));
    }

    @Test
    void isWorthNoMoreThanEverything() {
        double whole = SharedFact.perfect(values).value();
        assertThat(SharedFact.byCubic(values, fact).value()).isBetween(0.0, whole);
        // The difference of everything has sd √(60² + 2·80²) = 128.1
        assertThat(whole).isCloseTo(NormalInformation.gain(LEAD, Math.hypot(SD, 80 * Math.sqrt(2))), within(2.5));
    }

    @Test
    void isWorthNothingWhenTheFactHasNothingToDoWithIt() {
        Random random = new Random(29);
        double[] other = random.doubles(SAMPLES).toArray();
        assertThat(SharedFact.byCubic(values, other).value()).isLessThan(0.5);
        assertThat(SharedFact.byCubic(values, new double[SAMPLES]).value()).isLessThan(1e-9);
    }

    @Test
    void handlesAFactOfTwoOutcomes() {
        double[] coin = new double[SAMPLES];
        double[][] sure = new double[2][SAMPLES];
        for (int s = 0; s < SAMPLES; s++) {
            coin[s] = s % 2;
            sure[0][s] = 10 + (s % 2 == 0 ? 30 : -30);
        }
        assertThat(SharedFact.byCubic(sure, coin).value()).isCloseTo(10, within(1e-9));
    }

    @Test
    void rejectsSmallBins() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SharedFact.byBins(values, fact, 20))
                .withMessageContaining("at least 500");
    }
}
