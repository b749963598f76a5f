package org.keelweigh.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.haul.ExampleBoats;
import org.keelweigh.quantity.Length;

class FitFigureTests {

    @ParameterizedTest
    @CsvSource({
        // ITTC-1957: Tupper, Introduction to Naval Architecture, Table 8.3 p. 191; its 1e8 entry does not follow the
        // formula.
        "1e5,0.0083333",
        "5e5,0.0054815",
        "1e6,0.0046875",
        "5e6,0.0033967",
        "1e7,0.003",
        "5e7,0.0023092",
        "1e8,0.0020833",
        "5e8,0.0016713",
        "1e9,0.0015306",
        "1e10,0.0011719",
        "5e10,0.0009911",
        // Morrall, NPL Ship Report 142, 1970, worked example.
        "5.62e6,0.0033245"
    })
    void agreesWithFrictionLine(double reynolds, double coefficient) {
        assertThat(FrictionLine.coefficient(reynolds)).isCloseTo(coefficient, within(1e-6));
    }

    @Test
    void agreesWithDragOfACraft() {
        // Constructed: LWL 4.5 m, 1.5 m/s, fresh water at 15 C, 1.6 m2: Re 5926147, CF 0.0032925, 5.9211 N.
        double reynolds = FrictionLine.reynolds(1.5, 4.5, FrictionLine.FRESH_VISCOSITY_M2_PER_S);
        assertThat(reynolds).isCloseTo(5926147, within(1.0));
        assertThat(FrictionLine.coefficient(reynolds)).isCloseTo(0.0032925, within(1e-6));
        assertThat(FrictionLine.dragN(1.5, 4.5, 1.6)).isCloseTo(5.9211, within(1e-3));
        // The same in sea water, viscosity 1.18831e-6 m2/s: Re 5680336, CF 0.0033180.
        assertThat(FrictionLine.coefficient(FrictionLine.reynolds(1.5, 4.5, 1.18831e-6)))
                .isCloseTo(0.003318, within(1e-6));
    }

    @Test
    void rejectsReynoldsNumbersBelowTheLine() {
        assertThatIllegalArgumentException().isThrownBy(() -> FrictionLine.coefficient(50));
    }

    @ParameterizedTest
    // Linear wave theory, Newman, Marine Hydrodynamics, 1977: knots by waterline length in feet.
    @CsvSource({"9,4.022172", "12,4.644404", "14,5.01653", "16,5.362896", "18,5.68821"})
    void agreesWithWaveSpeed(double feet, double knots) {
        double speed = EasySpeed.WAVE_M_PER_S * Math.sqrt(feet * Length.M_PER_FOOT);
        assertThat(speed * 3600 / 1852).isCloseTo(knots, within(1e-6));
        assertThat(EasySpeed.WAVE_M_PER_S).isCloseTo(1.2493105, within(1e-7));
    }

    @Test
    void roundsTheWaveRuleToFourAndAHalf() {
        Boat boat = ExampleBoats.CANOE;
        double exact =
                3.6 * EasySpeed.WAVE_M_PER_S * Math.sqrt(0.94 * boat.lengthM().value());
        assertThat(EasySpeed.of(boat, 100).limitKmPerH()).isCloseTo(exact, within(0.01));
    }

    @ParameterizedTest
    // Common practice, no source: the example's boats.
    @CsvSource({"b1,4.6", "b2,6.1", "b3,4.9", "b4,4.6", "b5,4.5", "b6,4.3"})
    void agreesWithExampleSpeeds(String id, double kmPerH) {
        assertThat(EasySpeed.of(ExampleBoats.byId(id), 90).kmPerH()).isCloseTo(kmPerH, within(0.06));
    }

    @ParameterizedTest
    @CsvSource({
        // Common practice, no source.
        "SIT_INSIDE,GLASS_LAMINATE,5.0,0.58,6.8",
        "INFLATABLE_BOARD,DROP_STITCH,3.2,0.84,3.8"
    })
    void agreesWithSpeedsOfTheTrade(BoatKind kind, HullMaterial material, double lengthM, double beamM, double kmPerH) {
        Boat boat = ExampleBoats.boat(kind, material, DriveKind.NONE, lengthM, beamM, 20, 0, 0, 140);
        assertThat(EasySpeed.of(boat, 90).kmPerH()).isCloseTo(kmPerH, within(0.06));
    }

    @ParameterizedTest
    @CsvSource({"b1", "b2", "b3", "b4", "b5", "b6"})
    void findsFrictionSpeedInThePlausibleRange(String id) {
        EasySpeed speed = EasySpeed.of(ExampleBoats.byId(id), 90);
        assertThat(speed.frictionKmPerH()).isBetween(4.0, 7.5);
        assertThat(speed.frictionN()).isBetween(2.0, 15.0);
    }

    @Test
    void slowsALoadedBoatByFriction() {
        assertThat(EasySpeed.of(ExampleBoats.CANOE, 250).frictionKmPerH())
                .isLessThan(EasySpeed.of(ExampleBoats.CANOE, 70).frictionKmPerH());
    }

    @ParameterizedTest
    @CsvSource({
        // 33 CFR 175.15 and 175.17 as amended by 79 FR 56499 (2014); paddleboards: the rule names canoes and kayaks
        // only.
        "CANOE_OR_KAYAK,12,1,1,NONE",
        "CANOE_OR_KAYAK,17,2,2,NONE",
        "CANOE_OR_KAYAK,16,3,3,NONE",
        "ROWING_BOAT,15.9,2,2,NONE",
        "ROWING_BOAT,16,2,2,ONE",
        "RACING_CRAFT,20,1,0,NONE",
        "SAILBOARD,12,1,0,NONE",
        "PADDLEBOARD,12.5,1,1,NONE",
        "PADDLEBOARD,16,1,1,CHECK"
    })
    void agreesWithLifeJacketRule(
            LifeJackets.Craft craft, double feet, int persons, int wearable, LifeJackets.Throwing throwing) {
        LifeJackets needed = LifeJackets.required(craft, feet * Length.M_PER_FOOT, persons);
        assertThat(needed).isEqualTo(new LifeJackets(wearable, throwing));
        assertThat(LifeJackets.WORN_BELOW_AGE).isEqualTo(13);
    }

    @Test
    void namesTheCraftOfEachKind() {
        assertThat(LifeJackets.Craft.of(BoatKind.PEDAL_KAYAK)).isEqualTo(LifeJackets.Craft.CANOE_OR_KAYAK);
        assertThat(LifeJackets.Craft.of(BoatKind.HARD_BOARD)).isEqualTo(LifeJackets.Craft.PADDLEBOARD);
        assertThat(LifeJackets.Craft.of(BoatKind.ROWING_BOAT)).isEqualTo(LifeJackets.Craft.ROWING_BOAT);
    }

    @Test
    void rejectsJacketsForNobody() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LifeJackets.required(LifeJackets.Craft.ROWING_BOAT, 3, 0));
    }

    @ParameterizedTest
    @CsvSource({"-5,20", "0,20", "5,50", "10,80", "15,40", "20,0", "99,0"})
    void interpolatesAndStaysLevelOutside(double measure, double points) {
        assertThat(StraightLines.parse("0:20 10:80 20:0").at(measure)).isCloseTo(points, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"'0:20 0:30'", "'5:20 1:30'", "'a:1'", "'1'", "'0:101'", "'0:-1'"})
    void rejectsUnusablePoints(String text) {
        assertThatIllegalArgumentException().isThrownBy(() -> StraightLines.parse(text));
    }

    @ParameterizedTest
    @CsvSource({"0.9", "~3", "'>x'"})
    void rejectsUnusableBounds(String text) {
        assertThatIllegalArgumentException().isThrownBy(() -> FitRow.DealBreak.parse(text));
    }

    @Test
    void letsTheWeakestLinkRule() {
        // 0.6 x 40 + 0.4 x mean(40, 80, 90) = 52.
        assertThat(PersonFit.weakestLink(List.of(40.0, 80.0, 90.0)).orElseThrow())
                .isCloseTo(52, within(1e-9));
        assertThat(PersonFit.weakestLink(List.of())).isEmpty();
    }

    @ParameterizedTest
    // 900 mm up to 80 kg and 2.5 mm for each further kg: 937.5 mm at 95 kg, where the trade's table says 935.
    @CsvSource({"80,0.9", "84,0.91", "95,0.9375"})
    void addsBeamForMass(double massKg, double neededM) {
        NeededBeam beam =
                new NeededBeam("stand", Optional.of(PaddlingUse.STAND), NeededBeam.Hull.ANY, 1000, 0.9, "estimate");
        assertThat(beam.forMassM(massKg)).isCloseTo(neededM, within(1e-9));
    }
}
