package org.keelweigh.haul;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class LiftingEquationTests {

    private static LiftTask task(double load, double h, double v, double origin, double d, double a, double f) {
        return new LiftTask(load, h, v, origin, d, a, f, LiftDuration.SHORT, LiftGrip.FAIR);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/oracle/lifting-jobs.csv", useHeadersInDisplayName = true)
    void agreesWithWorkedJobs(
            String job,
            double load,
            double h,
            double v,
            double origin,
            double d,
            double a,
            double f,
            LiftGrip grip,
            double printedLimit,
            double printedIndex,
            double limit,
            double index) {
        LiftResult result = LiftingEquation.evaluate(
                LiftUnits.US, new LiftTask(load, h, v, origin, d, a, f, LiftDuration.SHORT, grip));
        assertThat(result.limit()).as(job).isCloseTo(limit, within(0.001));
        assertThat(result.index()).isCloseTo(index, within(0.001));
        assertThat(result.limit()).isCloseTo(printedLimit, within(0.025 * printedLimit));
        assertThat(result.index()).isCloseTo(printedIndex, within(0.12));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/oracle/lifting-frequency.csv", useHeadersInDisplayName = true)
    void agreesWithFrequencyTable(
            double f,
            double shortLow,
            double shortHigh,
            double moderateLow,
            double moderateHigh,
            double longLow,
            double longHigh) {
        assertThat(LiftDuration.SHORT.multiplier(f, false)).isCloseTo(shortLow, within(1e-6));
        assertThat(LiftDuration.SHORT.multiplier(f, true)).isCloseTo(shortHigh, within(1e-6));
        assertThat(LiftDuration.MODERATE.multiplier(f, false)).isCloseTo(moderateLow, within(1e-6));
        assertThat(LiftDuration.MODERATE.multiplier(f, true)).isCloseTo(moderateHigh, within(1e-6));
        assertThat(LiftDuration.LONG.multiplier(f, false)).isCloseTo(longLow, within(1e-6));
        assertThat(LiftDuration.LONG.multiplier(f, true)).isCloseTo(longHigh, within(1e-6));
    }

    @ParameterizedTest
    // Ideal conditions give the constant load: NIOSH 94-110, p. 12.
    @CsvSource({"US,10,30,10,51", "METRIC,25,75,25,23"})
    void recommendsTheConstantLoadInIdealConditions(LiftUnits units, double h, double v, double d, double limit) {
        LiftTask ideal = new LiftTask(limit, h, v, v, d, 0, 0.2, LiftDuration.SHORT, LiftGrip.GOOD);
        assertThat(LiftingEquation.evaluate(units, ideal).limit()).isCloseTo(limit, within(1e-9));
        assertThat(LiftingEquation.evaluate(units, ideal).index()).isCloseTo(1, within(1e-9));
    }

    @Test
    void differsBetweenSystemsByTwoPercent() {
        // Constructed: H 20 in, V 20 in, D 30 in, A 30 degrees, fair grip, computed in both systems by separate code.
        double us = LiftingEquation.evaluate(LiftUnits.US, task(0, 20, 20, 20, 30, 30, 0.2))
                .limit();
        double metric = LiftingEquation.evaluate(LiftUnits.METRIC, task(0, 50.8, 50.8, 50.8, 76.2, 30, 0.2))
                .limit();
        assertThat(us).isCloseTo(17.8261116, within(1e-6));
        assertThat(metric).isCloseTo(7.924637, within(1e-6));
        assertThat(us * 0.45359237).isCloseTo(8.085788, within(1e-6));
    }

    @ParameterizedTest
    // Range limits of the equation, NIOSH 94-110, pp. 13-25.
    @CsvSource({
        "METRIC,63,175,175,135,true",
        "METRIC,63.1,75,100,0,false",
        "METRIC,30,175.1,100,0,false",
        "METRIC,30,75,175.1,0,false",
        "METRIC,30,75,100,135.1,false",
        "US,25,70,70,135,true",
        "US,25.1,30,40,0,false",
        "US,12,70.1,40,0,false",
        "US,12,30,70.1,0,false"
    })
    void recommendsNoLiftBeyondItsRange(LiftUnits units, double h, double v, double d, double a, boolean inside) {
        double limit =
                LiftingEquation.evaluate(units, task(5, h, v, 20, d, a, 0.2)).limit();
        assertThat(limit > 0).isEqualTo(inside);
    }

    @Test
    void treatsCloseHandsAndShortTravelAsTheLeast() {
        LiftResult close = LiftingEquation.evaluate(LiftUnits.METRIC, task(1, 10, 75, 75, 5, 0, 0.2));
        assertThat(close.horizontal()).isEqualTo(1);
        assertThat(close.distance()).isEqualTo(1);
    }

    @Test
    void givesEndlessIndexWhereNoLiftIsRecommended() {
        assertThat(LiftingEquation.evaluate(LiftUnits.METRIC, task(1, 70, 75, 75, 30, 0, 0.2))
                        .index())
                .isInfinite();
    }

    @Test
    void agreesWithCompositeIndex() {
        // NIOSH 94-110, section 2.4.5 (p. 28), inputs from memory: full precision 1.880619; with rounding in between
        // 1.83.
        List<LiftingEquation.Part> parts = List.of(
                new LiftingEquation.Part(20, 1, 20),
                new LiftingEquation.Part(30, 2, 20),
                new LiftingEquation.Part(10, 4, 15));
        double index = LiftingEquation.compositeIndex(parts, LiftDuration.SHORT, false);
        assertThat(index).isCloseTo(1.880619, within(1e-5));
        assertThat(index).isCloseTo(1.83324, within(0.06));
    }

    @ParameterizedTest
    @CsvSource({"-1,30,75", "5,0,75", "5,30,-1", "NaN,30,75", "5,NaN,75"})
    void rejectsImpossibleLifts(double load, double h, double v) {
        assertThatIllegalArgumentException().isThrownBy(() -> task(load, h, v, 75, 30, 0, 0.2));
    }

    @Test
    void agreesWithPushEquations() {
        // Potvin et al., Ergonomics 64(8), 2021, Table 4: V 0.89 m, D 61 m, F 1/30 a minute; kgf to N by 9.80665.
        PushCapability push = PushCapability.of(0.89, 61, 1.0 / 30);
        assertThat(push.startMeanN() / 9.80665).isCloseTo(18.712496, within(1e-5));
        assertThat(push.startN() / 9.80665).isCloseTo(16.009476, within(1e-5));
        assertThat(push.steadyMeanN() / 9.80665).isCloseTo(7.600959, within(1e-5));
        assertThat(push.steadyN() / 9.80665).isCloseTo(6.133594, within(1e-5));
    }

    @ParameterizedTest
    // Potvin et al., Ergonomics 64(8), 2021, Table 4: reference load, coefficient of variation, what three in four can
    // do.
    @CsvSource({
        "34.9,0.26,28.8", "82.6,0.276,67.2", "37.0,0.307,29.3", "95.9,0.304,76.2", "36.9,0.214,31.6", "70.3,0.231,59.3",
        "25.5,0.286,20.6", "65.3,0.267,53.5", "36.9,0.234,31.1", "69.8,0.238,58.6", "25.5,0.298,20.4",
                "61.0,0.257,50.4",
        "28.6,0.231,24.1", "74.9,0.278,60.9"
    })
    void agreesWithThreeInFour(double mean, double variation, double capable) {
        assertThat(PushCapability.threeInFour(mean, variation)).isCloseTo(capable, within(0.06));
    }

    @Test
    void agreesWithGuidanceOnSlopes() {
        // UK HSE INDG143: 400 kg needs 8 kgf on the level at 2 %, and over 30 kgf on 1 in 12: gravity's part 33.218192
        // kgf.
        CartStatics trolley = new CartStatics(400 * 9.80665, 0, 0, 1, 0);
        double slope = Math.atan(1 / 12.0);
        assertThat(trolley.forces(0.02, 0, Heading.UPHILL).pullN() / 9.80665).isCloseTo(8, within(1e-9));
        assertThat(trolley.forces(0, slope, Heading.UPHILL).pullN() / 9.80665).isCloseTo(33.218192, within(1e-5));
        assertThat(trolley.forces(0.02, slope, Heading.UPHILL).pullN() / 9.80665)
                .isCloseTo(41.190558, within(0.03)); // the printed sum leaves out the cosine
    }
}
