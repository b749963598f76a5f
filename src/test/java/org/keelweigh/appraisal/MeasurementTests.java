package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.keelweigh.boat.BoatFacts;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Outcome;
import org.keelweigh.shortlist.CandidateData;

/** What each criterion measures, against figures worked by hand from the facts. */
class MeasurementTests {

    private static BoatReport report(CandidateData boat) {
        return Samples.measured(List.of(), boat).boats().getFirst();
    }

    private static double measure(Measure measure, CandidateData boat) {
        Measured measured = Samples.measured(List.of(), boat);
        return measured.boats()
                .getFirst()
                .measures()
                .getFirst()
                .get(measured.yardsticks().column(measure));
    }

    private static CandidateData boat(BoatKind kind, DriveKind drive) {
        return CandidateData.of("Boat", kind)
                .withBoat(new BoatFacts(
                        kind, null, drive, 2018, 1500.0, null, null, null, null, null, null, null, null, null,
                        List.of()));
    }

    private static CandidateData weighing(BoatKind kind, double massKg) {
        return CandidateData.of("Boat", kind)
                .withBoat(new BoatFacts(
                        kind, null, null, 2018, 1500.0, null, null, massKg, 0.0, null, null, 0.0, null, null,
                        List.of()));
    }

    @ParameterizedTest
    @EnumSource(
            value = BoatKind.class,
            names = {"CANOE", "SIT_ON_TOP", "INFLATABLE_BOARD", "ROWING_BOAT", "PEDAL_KAYAK"})
    void givesFullMarksForPartsOnlyToBoatsWithoutADrive(BoatKind kind) {
        assertThat(measure(Measure.SPARES, boat(kind, DriveKind.NONE))).isEqualTo(100);
        for (DriveKind drive : List.of(DriveKind.PROPELLER, DriveKind.FINS, DriveKind.MOTOR)) {
            assertThat(measure(Measure.SPARES, boat(kind, drive)))
                    .as(kind + " " + drive)
                    .isLessThan(95);
        }
    }

    /** Common practice, no source: what is found about parts decides, 90 in stock, 65 to order, 25 used only, none 0. */
    @ParameterizedTest
    @CsvSource({"FINE, 90", "MINOR, 65", "MAJOR, 25", "STOP, 0"})
    void readsPartsOffTheFinding(Outcome outcome, double points) {
        CandidateData canoe =
                boat(BoatKind.CANOE, DriveKind.PROPELLER).withFinding(Finding.of("drive-spares", outcome));

        assertThat(measure(Measure.SPARES, canoe)).isEqualTo(points);
    }

    @ParameterizedTest
    @EnumSource(
            value = DriveKind.class,
            names = {"PROPELLER", "FINS", "MOTOR"})
    void looksAtTheDriveOfWhateverBoatHasOne(DriveKind drive) {
        for (BoatKind kind : List.of(BoatKind.CANOE, BoatKind.INFLATABLE_BOARD, BoatKind.SIT_INSIDE)) {
            long here = driveChecks(boat(kind, drive));
            assertThat(here).as(kind + " " + drive).isEqualTo(driveChecks(boat(BoatKind.PEDAL_KAYAK, drive)));
            assertThat(here).isPositive();
        }
    }

    private static long driveChecks(CandidateData boat) {
        return Samples.CATALOGUES.inspection().applicable(report(boat).boat()).stream()
                .filter(each -> each.zone().code().equals("drive"))
                .count();
    }

    /** The row bag-mass of fit-rows.csv gives 60 points at 25 kg; so does a lift ratio of 1. */
    @Test
    void measuresTheLiftOfABagByItsMass() {
        assertThat(measure(Measure.LIFT, weighing(BoatKind.INFLATABLE_KAYAK, 25)))
                .isCloseTo(1, within(1e-9));
        assertThat(measure(Measure.LIFT, weighing(BoatKind.INFLATABLE_KAYAK, 12.5)))
                .isCloseTo(0.5, within(1e-9));
    }

    /** 1 − (1 − p stop) (1 − p fraud or theft). */
    @Test
    void addsUpTheChanceOfADud() {
        BoatReport report = report(Samples.priced("Boat", BoatKind.SIT_ON_TOP, 500));
        double stop = report.condition().hidden().stopChance();
        double concern = report.trust().listing().concern();

        assertThat(measure(Measure.WALK_RISK, Samples.priced("Boat", BoatKind.SIT_ON_TOP, 500)))
                .isCloseTo(stop + concern - stop * concern, within(1e-12));
    }

    /** 3 days, and 7 more for a serious repair (estimates); a life jacket is bought on the way. */
    @Test
    void waitsForSeriousRepairsOfTheBoat() {
        CandidateData sound = Samples.priced("Boat", BoatKind.SIT_ON_TOP, 500);

        assertThat(measure(Measure.WAIT, sound)).isEqualTo(3);
        assertThat(measure(Measure.WAIT, sound.withFinding(Finding.of("pfd", Outcome.MAJOR))))
                .isEqualTo(3);
        assertThat(measure(Measure.WAIT, sound.withFinding(Finding.of("hull-soft", Outcome.MAJOR))))
                .isEqualTo(10);
    }

    @Test
    void takesTheHardestPartOfTheWayForHauling() {
        BoatReport report = report(weighing(BoatKind.SIT_ON_TOP, 22));

        assertThat(measure(Measure.HAUL, weighing(BoatKind.SIT_ON_TOP, 22)))
                .isEqualTo(report.cart().haulers().getFirst().effort())
                .isGreaterThanOrEqualTo(report.cart().haulers().getFirst().ratio());
    }
}
