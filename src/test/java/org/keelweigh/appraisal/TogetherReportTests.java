package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.shortlist.Person;

class TogetherReportTests {

    private static Measured couple() {
        List<Person> people = List.of(Samples.person("Ann", "lift"), Samples.person("Ben", "cost"));
        return Samples.measured(
                people,
                Samples.priced("Light and dear", BoatKind.INFLATABLE_BOARD, 2500),
                Samples.priced("Cheap and heavy", BoatKind.CANOE, 150));
    }

    @Test
    void tellsWhomEachWouldChooseAndWhereTheyDiffer() {
        TogetherReport report = TogetherReport.of(couple()).orElseThrow();

        assertThat(report.voices().get(0).name()).isEqualTo("Ann");
        assertThat(report.voices().get(0).leader()).hasValue(0);
        assertThat(report.voices().get(1).leader()).hasValue(1);
        assertThat(report.contrasts().subList(0, 2))
                .extracting(each ->
                        couple().yardsticks().all().get(each.criterion()).id())
                .containsExactlyInAnyOrder("lift", "cost");
        assertThat(report.contrasts().getLast().points()).isZero();
    }

    @Test
    void givesTheMeanOfEverybodysTotalsTheMiddleWay() {
        Measured couple = couple();
        TogetherReport report = TogetherReport.of(couple).orElseThrow();
        Perspective together = couple.perspectives().getFirst();

        assertThat(report.compromise()).hasValue(together.ranking().leader().orElseThrow());
        for (int boat = 0; boat < 2; boat++) {
            double mean = report.shares().get(boat).totals().stream()
                    .mapToDouble(Double::doubleValue)
                    .average()
                    .orElseThrow();
            assertThat(together.ranking().total(boat)).isCloseTo(mean, within(1e-9));
        }
    }

    /** Two people, two boats, each the other's second choice: the regret is the larger of the two margins. */
    @Test
    void countsRegretAndPlacesAgainstEachPersonsOwnBest() {
        TogetherReport report = TogetherReport.of(couple()).orElseThrow();
        double anns = report.voices().get(0).margin().orElseThrow();
        double bens = report.voices().get(1).margin().orElseThrow();

        assertThat(report.shares().get(0).largestRegret()).isCloseTo(bens, within(1e-9));
        assertThat(report.shares().get(1).largestRegret()).isCloseTo(anns, within(1e-9));
        assertThat(report.leastRegret()).hasValue(bens < anns ? 0 : 1);
        assertThat(report.shares())
                .allSatisfy(each -> assertThat(each.bordaPoints()).isEqualTo(1));
    }

    @Test
    void hasNothingToSayAboutOneDecider() {
        Measured single =
                Samples.measured(List.of(Samples.person("Ann", "cost")), Samples.priced("Only", BoatKind.CANOE, 500));

        assertThat(TogetherReport.of(single)).isEmpty();
    }
}
