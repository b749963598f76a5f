package org.keelweigh.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.quantity.Estimate;

class ConditionAssessmentTests {

    private static final InspectionCatalogue CATALOGUE = InspectionCatalogue.read(Catalogue.shipped());
    private static final Boat PEDAL =
            SampleBoats.boat(BoatKind.PEDAL_KAYAK, HullMaterial.POLYETHYLENE, DriveKind.PROPELLER);
    private static final Boat CANOE = SampleBoats.boat(BoatKind.CANOE, HullMaterial.ARAMID, DriveKind.NONE);

    private static ConditionAssessment assess(Boat boat, Finding... findings) {
        return ConditionAssessment.of(CATALOGUE, boat, 5, 90, List.of(findings));
    }

    private static Finding minor(String check) {
        return Finding.of(check, Outcome.MINOR);
    }

    private static Finding major(String check) {
        return Finding.of(check, Outcome.MAJOR);
    }

    @Test
    void countsAQuarterOfAMinorAndFourFifthsOfAMajorFault() {
        // 0.25 · 25 for the grip and 0.8 · 280 for the gearbox, by hand.
        ConditionAssessment assessed = assess(PEDAL, minor("lines-handles"), major("prop-gears"));
        assertThat(assessed.knownRepairs().likely()).isCloseTo(0.25 * 25 + 0.8 * 280, within(1e-9));
        assertThat(assessed.repairs()).extracting(RepairLine::check).containsExactly("lines-handles", "prop-gears");
        assertThat(assessed.seriousRepairsLikely()).isEqualTo(280);
    }

    @Test
    void paysForOneRepairInAGroupOnly() {
        // Gears and oil are one opening of the drive: the dearer repair, 0.8 · 280, counts alone.
        ConditionAssessment assessed = assess(PEDAL, major("prop-gears"), major("prop-oil"));
        assertThat(assessed.knownRepairs().likely()).isCloseTo(0.8 * 280, within(1e-9));
        RepairLine cured = assessed.repairs().getLast();
        assertThat(cured.check()).isEqualTo("prop-oil");
        assertThat(cured.expectedShare()).isZero();
        assertThat(cured.reason()).contains("Gears of the propeller drive");
    }

    @Test
    void addsUpMissingGear() {
        // 0.8 · 180 for what was promised and is missing, 0.25 · 15 for a chipped paddle.
        ConditionAssessment assessed = assess(PEDAL, major("gear-inventory"), minor("paddle"));
        assertThat(assessed.knownRepairs().likely()).isCloseTo(0.8 * 180 + 0.25 * 15, within(1e-9));
    }

    /** Whoever needs a paddle buys one with the rest of the kit; as a repair it would be paid a second time. */
    @Test
    void leavesGearThatHasToBeBoughtAnewToTheCostOfOwning() {
        ConditionAssessment assessed = assess(PEDAL, major("paddle"), major("pfd"));
        assertThat(assessed.knownRepairs().likely()).isZero();
        assertThat(assessed.repairs())
                .allSatisfy(line -> assertThat(line.reason()).contains("has to be bought"));
    }

    @Test
    void letsAQuoteReplaceTheCatalogue() {
        Estimate quote = new Estimate(300, 320, 340);
        Finding quoted = new Finding("prop-gears", Outcome.MAJOR, Method.REPAIRER, null, null, quote);
        ConditionAssessment assessed = assess(PEDAL, quoted);
        assertThat(assessed.knownRepairs()).isEqualTo(quote);
        assertThat(assessed.repairs().getFirst().reason()).contains("written quote");
    }

    @Test
    void paysNothingForASellersManners() {
        ConditionAssessment assessed = assess(PEDAL, major("past-life"), major("seller-knows"));
        assertThat(assessed.repairs()).isEmpty();
        assertThat(assessed.hidden().groups())
                .extracting(HiddenRepairs.Spread::group)
                .doesNotContain(RepairGroup.SELLER, RepairGroup.PAPERS, RepairGroup.GEAR, RepairGroup.TRAILER);
    }

    @Test
    void combinesResaleEffectsAndCapsThem() {
        // 1 - (1 - 0.20)(1 - 0.05) = 0.24 by hand.
        assertThat(assess(PEDAL, major("prop-gears"), minor("hull-uv")).resaleLossIfLeft())
                .isCloseTo(0.24, within(1e-12));
        Finding stop = Finding.of("hull-crack", Outcome.STOP);
        Finding brittle = Finding.of("hull-uv", Outcome.STOP);
        assertThat(assess(PEDAL, stop, brittle).resaleLossIfLeft()).isEqualTo(0.7);
    }

    @Test
    void losesLessOfThePriceOnceFaultsAreMended() {
        // The gearbox is mended in four of five cases: 0.20 · 0.2.
        assertThat(assess(PEDAL, major("prop-gears")).resaleLossExpected()).isCloseTo(0.04, within(1e-12));
    }

    @Test
    void tellsStopsAsksAndWhatCanKill() {
        ConditionAssessment assessed =
                assess(PEDAL, Finding.of("hull-crack", Outcome.STOP), major("prop-gears"), major("pfd"));
        assertThat(assessed.stops()).extracting(SeriousFinding::check).containsExactly("hull-crack");
        assertThat(assessed.asks()).extracting(SeriousFinding::check).containsExactly("prop-gears");
        assertThat(assessed.unsafe()).extracting(SeriousFinding::check).containsExactly("hull-crack", "pfd");
        assertThat(assessed.stops().getFirst().reason()).startsWith("Cracks in the hull: ");
        assertThat(assessed.conditionClass()).isEqualTo(ConditionClass.PARTS);
    }

    @Test
    void reportsUnknownAndUnfittingFindingsInsteadOfFailing() {
        ConditionAssessment assessed =
                assess(CANOE, major("prop-gears"), major("anchor-locker"), minor("capacity-label"));
        assertThat(assessed.repairs()).isEmpty();
        assertThat(assessed.ignored())
                .extracting(IgnoredFinding::why)
                .containsExactly(
                        "There is no check named \"anchor-locker\" in the catalogue.",
                        "\"Find the load rating\" cannot come out minor on a canoe.",
                        "\"Gears of the propeller drive\" does not apply to a canoe of aramid laminate with paddle or"
                                + " oars only.");
    }

    @Test
    void letsTheBetterLookCount() {
        Finding seller = new Finding("prop-gears", Outcome.FINE, Method.SELLER_STATEMENT, null, null, null);
        ConditionAssessment assessed = assess(PEDAL, seller, major("prop-gears"));
        assertThat(assessed.repairs()).hasSize(1);
        assertThat(assessed.ignored()).hasSize(1);
    }

    @Test
    void takesAMissingPartOutOfTheInspection() {
        ConditionAssessment before = assess(PEDAL);
        ConditionAssessment after = assess(PEDAL, Finding.of("rudder-mount", Outcome.NOT_FITTED));
        assertThat(after.progress().applicable()).isEqualTo(before.progress().applicable() - 1);
        assertThat(after.progress().made()).isZero();
        assertThat(after.hidden().mean()).isLessThan(before.hidden().mean());
    }

    // P(fault | reported fine) with p = 0.05 major or worse, s = 0.15, false alarm 0.10 is 0.047, worked by hand for
    // that grade alone.
    @Test
    void believesATouchMoreThanAPicture() {
        Check scupper = CATALOGUE.check("scupper-crack").orElseThrow();
        OutcomeChances before = OutcomeChances.ofFaults(0, 0.05, 0);
        assertThat(CATALOGUE
                        .afterReportedFine(scupper, before, Method.LISTING_PHOTOS)
                        .major())
                .isCloseTo(0.047, within(0.0005));
        assertThat(CATALOGUE.afterReportedFine(scupper, before, Method.TOUCHED).major())
                .isCloseTo(0.006, within(0.0005));
    }

    @Test
    void learnsNothingFromAPictureOfWhatNoPictureShows() {
        Check leak = CATALOGUE.check("leak-test").orElseThrow();
        OutcomeChances before = leak.chancesAtFiveYears();
        assertThat(CATALOGUE
                        .afterReportedFine(leak, before, Method.REQUESTED_PHOTOS)
                        .fault())
                .isCloseTo(before.fault(), within(1e-12));
    }

    @Test
    void knowsHowWellEachWayOfKnowingWorks() {
        Check gears = CATALOGUE.check("prop-gears").orElseThrow();
        assertThat(CATALOGUE.sensitivity(gears, Method.SELLER_STATEMENT)).isCloseTo(0.30, within(1e-12));
        assertThat(CATALOGUE.sensitivity(gears, Method.REQUESTED_PHOTOS)).isCloseTo(0.22, within(1e-12));
        assertThat(CATALOGUE.sensitivity(gears, Method.SEEN)).isCloseTo(0.528, within(1e-12));
        // 1 - (1 - 0.88)^1.6 by hand.
        assertThat(CATALOGUE.sensitivity(gears, Method.SECOND_PERSON)).isCloseTo(0.9664, within(1e-4));
        assertThat(CATALOGUE.sensitivity(gears, Method.REPAIRER)).isCloseTo(0.95, within(1e-12));
        Check photo = CATALOGUE.check("photo-match").orElseThrow();
        assertThat(CATALOGUE.sensitivity(photo, Method.REQUESTED_PHOTOS)).isCloseTo(0.9, within(1e-12));
        assertThat(CATALOGUE.falseAlarm(Method.LISTING_PHOTOS)).isEqualTo(0.10);
    }

    @Test
    void gradesTheEvidence() {
        assertThat(assess(PEDAL).progress().grade()).isEqualTo('D');
        Finding[] touchedAll = CATALOGUE.applicable(PEDAL).stream()
                .map(check -> new Finding(check.id(), Outcome.FINE, Method.REPAIRER, null, null, null))
                .toArray(Finding[]::new);
        ConditionAssessment all = assess(PEDAL, touchedAll);
        assertThat(all.progress().evidenceShare()).isCloseTo(0.95, within(1e-12));
        assertThat(all.progress().grade()).isEqualTo('A');
        assertThat(all.progress().minutesLeft()).isZero();
        assertThat(all.nextChecks()).isEmpty();
        assertThat(all.conditionClass()).isEqualTo(ConditionClass.EXCELLENT);
    }

    @Test
    void callsAnUnseenBoatGoodAndSeveralSeriousFaultsFair() {
        assertThat(assess(PEDAL).conditionClass()).isEqualTo(ConditionClass.GOOD);
        // One in five is left: 0.2 · 0.15 = 0.03.
        assertThat(assess(PEDAL, major("stern-drag")).conditionClass()).isEqualTo(ConditionClass.GOOD);
        // 1 − (1 − 0.2 · 0.20)(1 − 0.2 · 0.18)(1 − 0.2 · 0.22) = 0.115.
        assertThat(assess(PEDAL, major("prop-gears"), major("hull-uv"), major("hull-repairs"))
                        .conditionClass())
                .isEqualTo(ConditionClass.FAIR);
    }

    @Test
    void callsABoatWithAQuotedFaultGoodAndOneThatNothingMendsPartsOnly() {
        Finding quoted = new Finding("hull-crack", Outcome.STOP, Method.REPAIRER, null, null, Estimate.exactly(400));
        assertThat(assess(PEDAL, Finding.of("hull-crack", Outcome.STOP)).conditionClass())
                .isEqualTo(ConditionClass.PARTS);
        assertThat(assess(PEDAL, quoted).conditionClass()).isEqualTo(ConditionClass.GOOD);
        assertThat(assess(PEDAL, quoted).resaleLossExpected()).isZero();
        assertThat(assess(PEDAL, Finding.of("hull-uv", Outcome.STOP)).resaleLossExpected())
                .isCloseTo(0.7, within(1e-12));
    }

    @Test
    void putsCheapRevealingChecksFirstAndWaterLast() {
        List<NextCheck> next = assess(PEDAL).nextChecks();
        assertThat(next.stream().limit(10).map(each -> each.check().id())).contains("prop-gears", "stern-drag");
        assertThat(next.subList(next.size() - 3, next.size()).stream()
                        .map(each -> each.check().id()))
                .containsExactlyInAnyOrder("drive-water", "leak-test", "deck-wet");
        double worth = next.getFirst().worthPerMinute();
        assertThat(worth * next.getFirst().check().minutes())
                .isCloseTo(next.getFirst().worth(), within(1e-9));
    }

    @Test
    void takesChancesFromOutside() {
        List<Finding> none = List.of();
        ConditionAssessment sound =
                ConditionAssessment.of(CATALOGUE, PEDAL, 5, 90, none, check -> OutcomeChances.ofFaults(0, 0, 0));
        assertThat(sound.hidden().mean()).isZero();
        assertThat(sound.hidden().stopChance()).isZero();
        ConditionAssessment worn = ConditionAssessment.of(
                CATALOGUE,
                PEDAL,
                5,
                90,
                none,
                check -> OutcomeChances.ofFaults(0, check.id().equals("prop-gears") ? 0.5 : 0, 0));
        assertThat(worn.hidden().mean()).isCloseTo(0.5 * 0.8 * 280, within(1e-9));
    }

    @Test
    void countsAHiddenFaultOnlyBeyondTheKnownOneInItsGroup() {
        // Known gears major 224; hidden oil stop 900 with chance 0.1 adds 0.1 · (900 - 224), by hand.
        ConditionAssessment assessed = ConditionAssessment.of(
                CATALOGUE,
                PEDAL,
                5,
                90,
                List.of(major("prop-gears")),
                check -> OutcomeChances.ofFaults(0, 0, check.id().equals("prop-oil") ? 0.1 : 0));
        assertThat(assessed.hidden().mean()).isCloseTo(0.1 * (900 - 224), within(1e-9));
        HiddenRepairs.Spread drive = assessed.hidden().groups().stream()
                .filter(each -> each.group() == RepairGroup.DRIVE_INTERNAL)
                .findFirst()
                .orElseThrow();
        assertThat(Arrays.asList(drive.quantile(0.5), drive.quantile(0.95))).containsExactly(0.0, 676.0);
    }
}
