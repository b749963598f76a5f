package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.WaterNeed;

class OutlookTests {

    private static final Catalogues CATALOGUES = Catalogues.read(Catalogue.shipped());
    private static final Measured MEASURED = new Appraiser(CATALOGUES)
            .measure(
                    AppraiserTests.facts(
                            AppraiserTests.priced("One", BoatKind.SIT_ON_TOP, 640)
                                    .withFinding(Finding.of("hull-uv", Outcome.MINOR)),
                            AppraiserTests.priced("Other", BoatKind.SIT_ON_TOP, 600),
                            AppraiserTests.priced("Third", BoatKind.SIT_INSIDE, 700)
                                    .withFinding(Finding.of("hin-read", Outcome.STOP))),
                    2026);
    private static final Perspective PERSPECTIVE = MEASURED.perspectives().getFirst();
    private static final Outlook OUTLOOK = Outlook.of(MEASURED);

    @Test
    void sharesTheFirstPlaceAmongTheBoatsThatAreNotRuledOut() {
        Confidence confidence = OUTLOOK.confidence(PERSPECTIVE);

        assertThat(confidence.chanceBest(0) + confidence.chanceBest(1)).isCloseTo(1, within(0.01));
        assertThat(confidence.chanceBest(2)).isZero();
        assertThat(confidence.samples()).isEqualTo(Appraiser.FUTURES);
        // a share of 4096 draws has a standard error of at most sqrt(0.25 / 4096)
        assertThat(confidence.largestError()).isLessThanOrEqualTo(Math.sqrt(0.25 / 4096) + 1e-12);
    }

    @Test
    void givesTheSameConfidenceEveryTime() {
        assertThat(OUTLOOK.confidence(PERSPECTIVE).chanceBest(0))
                .isEqualTo(Outlook.of(MEASURED).confidence(PERSPECTIVE).chanceBest(0));
    }

    @Test
    void neverGainsMoreFromARealLookThanFromAPerfectOne() {
        NextChecks real = CheckAdvisor.advise(CATALOGUES, OUTLOOK, PERSPECTIVE);
        Map<String, CheckOutlook> perfect = CheckAdvisor.bound(CATALOGUES, OUTLOOK, PERSPECTIVE).outlooks().stream()
                .collect(Collectors.toMap(each -> each.boat() + each.check().id(), Function.identity()));

        assertThat(real.outlooks()).isNotEmpty();
        for (CheckOutlook each : real.outlooks()) {
            assertThat(each.gain()).isNotNegative();
            assertThat(each.gain())
                    .as(each.check().id())
                    .isLessThanOrEqualTo(
                            perfect.get(each.boat() + each.check().id()).gain() + 1e-9);
        }
    }

    /**
     * Entering a report has to do what the advisor reckoned with: w·v'(cost)·ΔR and w·v'(dud)·Δp·(1 − fraud), straight lines
     * about today (decision record 7), so a tenth of a point or a third of the step is left to their curves.
     */
    @Test
    void movesTheAnswerByAnEnteredReportAsForecast() {
        int cost = MEASURED.yardsticks().column(Measure.COST);
        int dud = MEASURED.yardsticks().column(Measure.WALK_RISK);
        BoatReport boat = MEASURED.boats().get(1);
        int moved = 0;
        for (BoatProspects.Prospective each : BoatProspects.of(CATALOGUES, boat, 1, false)) {
            String check = each.check().id();
            // papers and sellers move the chance of fraud, which the advisor holds still
            if (!each.check().group().hiddenInBoat()
                    || each.check().water() == WaterNeed.NEEDS
                    || boat.belief()
                                    .reports(check, CATALOGUES.causes().reliability(check, Method.TOUCHED))
                                    .getFirst()
                                    .report()
                            != Outcome.FINE) {
                continue;
            }
            double forecast = slope(cost, boat) * each.repairs()[0]
                    + slope(dud, boat)
                            * each.dud()[0]
                            * (1 - boat.trust().listing().concern());
            Perspective after = new Appraiser(CATALOGUES)
                    .measure(
                            AppraiserTests.facts(
                                    MEASURED.boats().get(0).candidate().data(),
                                    boat.candidate().data().withFinding(Finding.of(check, Outcome.FINE)),
                                    MEASURED.boats().get(2).candidate().data()),
                            2026)
                    .perspectives()
                    .getFirst();
            double actual = after.ranking().contribution(1, cost)
                    + after.ranking().contribution(1, dud)
                    - PERSPECTIVE.ranking().contribution(1, cost)
                    - PERSPECTIVE.ranking().contribution(1, dud);
            assertThat(actual).as(check).isCloseTo(forecast, within(Math.max(0.1, Math.abs(forecast) / 3)));
            moved += Math.abs(forecast) > 0.2 ? 1 : 0;
        }
        assertThat(moved).isPositive();
    }

    private static double slope(int column, BoatReport boat) {
        return PERSPECTIVE.share(column)
                * MEASURED.yardsticks()
                        .all()
                        .get(column)
                        .criterion()
                        .valueFunction()
                        .marginal(boat.measures().getFirst().get(column));
    }

    @Test
    void gainsFromAReportThatOnlyTheChanceOfADudSpeaksFor() {
        // whoever weighs nothing but the chance of a dud still learns from a check, though money hardly counts
        Measured measured = Samples.measured(
                List.of(Samples.person("Ann", "walk-risk", "cost")),
                Samples.priced("One", BoatKind.SIT_ON_TOP, 640),
                Samples.priced("Other", BoatKind.SIT_ON_TOP, 600));

        assertThat(CheckAdvisor.advise(
                                CATALOGUES,
                                Outlook.of(measured),
                                measured.perspectives().getFirst())
                        .outlooks())
                .isNotEmpty();
    }

    @Test
    void neverAdvisesToCheckABoatThatIsRuledOut() {
        assertThat(CheckAdvisor.advise(CATALOGUES, OUTLOOK, PERSPECTIVE).outlooks())
                .noneMatch(each -> each.boat() == 2);
    }

    @Test
    void gainsMoreFromTheWholeVisitThanFromItsFirstCheck() {
        NextChecks checks = CheckAdvisor.advise(CATALOGUES, OUTLOOK, PERSPECTIVE);

        assertThat(checks.everything()).isGreaterThanOrEqualTo(checks.visitGain() - 1e-9);
        assertThat(checks.visit()).isNotEmpty();
        assertThat(checks.visitMinutes()).isLessThanOrEqualTo(45);
    }

    @Test
    void makesNoOfferForABoatThatIsRuledOut() {
        List<BoatOffer> offers = Offers.of(OUTLOOK, PERSPECTIVE, CATALOGUES);

        assertThat(offers.get(2)).isInstanceOf(BoatOffer.None.class);
        assertThat(((BoatOffer.None) offers.get(2)).reason()).contains("ruled out");
    }

    @Test
    void ordersTheThreePricesAndLetsTheChanceFallWithThePrice() {
        BoatOffer.Offer offer =
                (BoatOffer.Offer) Offers.of(OUTLOOK, PERSPECTIVE, CATALOGUES).getFirst();

        assertThat(offer.plan()).hasValueSatisfying(plan -> {
            assertThat(plan.opening()).isLessThanOrEqualTo(plan.target());
            assertThat(plan.target()).isLessThanOrEqualTo(plan.walkAway());
        });
        for (int i = 1; i < offer.curve().size(); i++) {
            assertThat(offer.curve().get(i).chanceBest())
                    .isLessThanOrEqualTo(offer.curve().get(i - 1).chanceBest());
        }
    }

    @Test
    void tiesWithTheBestOtherBoatAtTheTiePrice() {
        BoatOffer.Offer offer =
                (BoatOffer.Offer) Offers.of(OUTLOOK, PERSPECTIVE, CATALOGUES).getFirst();
        assertThat(offer.tie()).isInstanceOf(Tie.At.class);
        double tie = ((Tie.At) offer.tie()).price();

        Measured atTie = new Appraiser(CATALOGUES)
                .measure(
                        AppraiserTests.facts(
                                AppraiserTests.priced("One", BoatKind.SIT_ON_TOP, tie)
                                        .withFinding(Finding.of("hull-uv", Outcome.MINOR)),
                                AppraiserTests.priced("Other", BoatKind.SIT_ON_TOP, 600)),
                        2026);
        Perspective there = atTie.perspectives().getFirst();

        int cost = atTie.yardsticks().column(Measure.COST);
        assertThat(there.ranking().contribution(0, cost) - PERSPECTIVE.ranking().contribution(0, cost))
                .isCloseTo(
                        PERSPECTIVE.ranking().total(1) - PERSPECTIVE.ranking().total(0), within(0.05));
    }
}
