package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Outcome;
import org.keelweigh.cost.CostLine;
import org.keelweigh.shortlist.CandidateData;

/** The one figure that ranks and stands in headlines is the mean of the futures that confidence and ties are read from. */
class ExpectedCostTests {

    static Stream<CandidateData> boats() {
        CandidateData pedal = Samples.priced("Pedal", BoatKind.PEDAL_KAYAK, 1400);
        return Stream.concat(
                Stream.of(BoatKind.values()).map(kind -> Samples.priced(kind.code(), kind, 800)),
                Stream.of(
                        pedal.withFinding(Finding.of("prop-gears", Outcome.MAJOR)),
                        pedal.withFinding(Finding.of("hull-crack", Outcome.FINE))
                                .withFinding(Finding.of("hull-uv", Outcome.MAJOR))
                                .withFinding(Finding.of("seam-visual", Outcome.MINOR))));
    }

    /** 4096 seeded futures. The standard error leaves out that the draws are stratified, so it is on the safe side. */
    @ParameterizedTest
    @MethodSource("boats")
    void isTheMeanOfTheFutures(CandidateData boat) {
        BoatReport report = Samples.measured(List.of(), boat).boats().getFirst();
        BoatFutures futures = report.futures();
        assertThat(futures.mean()).isCloseTo(report.cost().presentValue(), within(futures.meanError()));
    }

    @ParameterizedTest
    @MethodSource("boats")
    void expectsTheUnseenRepairsThatTheFuturesHave(CandidateData boat) {
        BoatReport report = Samples.measured(List.of(), boat).boats().getFirst();
        BoatFutures futures = report.futures();
        double squares = 0;
        for (int w = 0; w < futures.size(); w++) {
            squares += Math.pow(futures.hiddenRepairs(w) - futures.meanHiddenRepairs(), 2);
        }
        double error = Math.sqrt(squares) / futures.size();
        assertThat(report.unseenRepairs()).isCloseTo(futures.meanHiddenRepairs(), within(3 * error));
    }

    /** Every line stands for its expected value, so that the lines add up to the figure above them. */
    @Test
    void addsUpItsLines() {
        BoatReport report = Samples.measured(List.of(), Samples.priced("One", BoatKind.CANOE, 700))
                .boats()
                .getFirst();
        double sum = report.cost().lines().stream()
                .mapToDouble(CostLine::presentValue)
                .sum();
        assertThat(report.cost().presentValue()).isCloseTo(sum, within(1e-9));
        assertThat(report.measures().getFirst().getFirst()).isCloseTo(sum, within(1e-9));
        // estimates reach further up than down, so the likely values add up to less
        assertThat(report.cost().likelyPresentValue()).isLessThan(sum);
    }
}
