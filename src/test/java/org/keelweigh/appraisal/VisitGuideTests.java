package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.ConditionAssessment;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.NextCheck;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.SellerQuestion;
import org.keelweigh.condition.Zone;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.VisitOrder;

class VisitGuideTests {

    private static final Appraiser APPRAISER = new Appraiser(Catalogues.read(Catalogue.shipped()));

    @Test
    void plansWhatFitsAndWalksInTheOrderOfTheZones() {
        ConditionAssessment condition = measured(pedal()).boats().getFirst().condition();

        VisitRoute route = VisitRoute.of(condition, 45, VisitOrder.WALK, List.of());

        assertThat(route.planned()).hasSizeGreaterThan(3);
        assertThat(route.planned().stream().mapToDouble(Check::minutes).sum()).isLessThanOrEqualTo(45);
        assertThat(route.planned()).extracting(Check::zone).isSortedAccordingTo(Zone::compareTo);
        assertThat(route.all()).hasSameSizeAs(condition.nextChecks());
        double left = 45 - route.planned().stream().mapToDouble(Check::minutes).sum();
        assertThat(route.later())
                .allSatisfy(check -> assertThat(check.minutes()).isGreaterThan(left));
    }

    @Test
    void beginsWithWhatIsWorthMost() {
        ConditionAssessment condition = measured(pedal()).boats().getFirst().condition();

        assertThat(VisitRoute.of(condition, 500, VisitOrder.WORTH, List.of()).all())
                .isEqualTo(condition.nextChecks().stream().map(NextCheck::check).toList());
    }

    @Test
    void beginsWithWhatCouldChangeTheChoice() {
        ConditionAssessment condition = measured(pedal()).boats().getFirst().condition();
        List<Check> byWorth =
                condition.nextChecks().stream().map(NextCheck::check).toList();
        CheckOutlook fourth = new CheckOutlook(0, byWorth.get(3), 20, 1, 0.03, 5);
        CheckOutlook second = new CheckOutlook(0, byWorth.get(1), 90, 1, 0.2, 30);
        CheckOutlook other = new CheckOutlook(1, byWorth.get(2), 95, 1, 0.3, 1);
        NextChecks advice = new NextChecks(List.of(other, fourth, second), List.of(second), 30, 90, 110, "");

        List<Check> all =
                VisitRoute.of(condition, 500, VisitOrder.CHOICE, advice.on(0)).all();

        assertThat(all.subList(0, 3)).containsExactly(byWorth.get(1), byWorth.get(3), byWorth.getFirst());
        assertThat(all).containsExactlyInAnyOrderElementsOf(byWorth);
        assertThat(fourth.reason()).isEqualTo("would change the choice in 3 of 100 cases");
    }

    @Test
    void fallsBackToTheWorthWhileTheChoiceIsNotWorkedOut() {
        ConditionAssessment condition = measured(pedal()).boats().getFirst().condition();

        assertThat(VisitRoute.of(condition, 30, VisitOrder.CHOICE, List.of()))
                .isEqualTo(VisitRoute.of(condition, 30, VisitOrder.WORTH, List.of()));
    }

    @Test
    void leavesOutWhatWasMadeMeanwhile() {
        ConditionAssessment condition = measured(pedal()).boats().getFirst().condition();
        VisitRoute route = VisitRoute.of(condition, 45, VisitOrder.WORTH, List.of());
        Check made = route.planned().getFirst();

        assertThat(route.without(made::equals).all())
                .hasSize(route.all().size() - 1)
                .doesNotContain(made);
    }

    @Test
    void plansNothingWithoutTime() {
        ConditionAssessment condition = measured(pedal()).boats().getFirst().condition();

        assertThat(VisitRoute.of(condition, 0, VisitOrder.WALK, List.of()).planned())
                .isEmpty();
    }

    @Test
    void namesEachToolOnceAndTheMostUsefulFirst() {
        List<Check> checks = VisitRoute.of(
                        measured(pedal()).boats().getFirst().condition(), 500, VisitOrder.WALK, List.of())
                .all();

        List<String> tools = VisitGuide.tools(checks);

        assertThat(tools).doesNotHaveDuplicates().doesNotContain("hands", "none", "eyes");
        assertThat(tools.getFirst()).isEqualTo("torch");
    }

    @Test
    void asksAboutADriveOnlyWhereThereIsOne() {
        List<SellerQuestion> questions = SellerQuestion.read(Catalogue.shipped());

        assertThat(questions.stream()
                        .filter(each -> each.applies()
                                .to(measured(CandidateData.of("Canoe", BoatKind.CANOE))
                                        .boats()
                                        .getFirst()
                                        .boat()))
                        .map(SellerQuestion::id))
                .contains("why-selling", "accident")
                .doesNotContain("drive-service", "battery-age", "air-overnight");
    }

    @Test
    void tellsPlaceAndLeader() {
        Measured measured = measured(pedal(), CandidateData.of("Canoe", BoatKind.CANOE));
        int leader = measured.perspectives().getFirst().ranking().leader().orElseThrow();

        for (int boat = 0; boat < 2; boat++) {
            Standing standing = Standing.of(measured, measured.boats().get(boat).id());
            assertThat(standing.leads()).isEqualTo(boat == leader);
            assertThat(standing.sentence())
                    .startsWith(measured.boats().get(boat).name() + " is " + (boat == leader ? "first" : "second")
                            + " of 2 with ");
            assertThat(standing.sentence().contains(" leads with ")).isEqualTo(boat != leader);
        }
    }

    @Test
    void tellsWhyABoatIsRuledOut() {
        Measured measured = measured(pedal().withFinding(Finding.of("hin-read", Outcome.STOP)));

        Standing standing = Standing.of(measured, measured.boats().getFirst().id());

        assertThat(standing.ruledOut()).isTrue();
        assertThat(standing.sentence()).startsWith("Pedal is ruled out: ");
    }

    @Test
    void knowsNoOtherBoats() {
        Measured measured = measured(pedal());

        assertThatThrownBy(() -> Standing.of(measured, CandidateId.fresh()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static CandidateData pedal() {
        return CandidateData.of("Pedal", BoatKind.PEDAL_KAYAK);
    }

    private static Measured measured(CandidateData... boats) {
        return APPRAISER.measure(AppraiserTests.facts(boats), 2026);
    }
}
