package org.keelweigh.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.haul.ExampleBoats;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.UnitSystem;

class FitAssessmentTests {

    private static final Display METRIC = new Display(UnitSystem.METRIC, "USD");

    private static final FitCatalogue CATALOGUE = FitCatalogue.read(Catalogue.shipped());

    private static Paddler wren(@Nullable PaddlingUse use, @Nullable Double hipM) {
        return new Paddler("Wren", 84.0, 1.83, hipM, use);
    }

    private static Paddler alder(@Nullable Double hipM) {
        return new Paddler("Alder", 58.0, 1.65, hipM, PaddlingUse.FISH_SEATED);
    }

    private static Setting setting(@Nullable Double gearKg, @Nullable Waters main, @Nullable Waters hardest) {
        return new Setting(
                gearKg, main, hardest, null, null, null, null, null, null, null, null, null, null, null, null, null);
    }

    private static Setting place(
            @Nullable Double storeM,
            @Nullable Boolean elsewhere,
            @Nullable Double carM,
            @Nullable Double roof,
            @Nullable Double spreadM,
            @Nullable Boolean canTow) {
        return new Setting(
                null, null, null, null, null, null, storeM, elsewhere, carM, roof, spreadM, canTow, null, null, null,
                null);
    }

    private static FitAssessment assess(Boat boat, Setting setting, Paddler... paddlers) {
        return FitAssessment.of(
                CATALOGUE, boat, Arrays.stream(paddlers).map(Aboard::of).toList(), setting, METRIC);
    }

    @ParameterizedTest
    // Common practice, no source: capacity used and its points; Wren alone + 12 kg, on the canoe both + 15 kg.
    @CsvSource({"b1,12,0.45,100", "b2,15,0.44,99", "b3,12,0.50,98", "b4,12,0.53,97"})
    void agreesWithExampleCapacity(String id, double gearKg, double used, double points) {
        Paddler wren = wren(PaddlingUse.FISH_SEATED, null);
        FitAssessment fit = assess(ExampleBoats.byId(id), setting(gearKg, null, null), wren, alder(null));
        FitScore.Scored capacity =
                fit.people().getFirst().scored("capacity-used").orElseThrow();
        assertThat(capacity.measure()).isCloseTo(used, within(0.005));
        assertThat(capacity.points()).isCloseTo(points, within(0.6));
    }

    @ParameterizedTest
    // Common practice, no source: Sedge, 63 kg + 9 kg.
    @CsvSource({"b5,0.36,91,SIT_CHOP_FIRST_TIMER,60,97", "b6,0.53,97,SIT_CALM_FIRST_TIMER,50,96"})
    void agreesWithExampleForTheSoloBuyer(
            String id, double used, double points, PaddlingUse use, double marginMm, double stability) {
        Paddler sedge = new Paddler("Sedge", 63.0, 1.68, null, use);
        PersonFit fit = assess(ExampleBoats.byId(id), setting(9.0, null, null), sedge)
                .people()
                .getFirst();
        assertThat(fit.scored("capacity-used").orElseThrow().measure()).isCloseTo(used, within(0.005));
        assertThat(fit.scored("capacity-used").orElseThrow().points()).isCloseTo(points, within(0.6));
        assertThat(fit.scored("stability").orElseThrow().measure()).isCloseTo(marginMm, within(1e-6));
        assertThat(fit.scored("stability").orElseThrow().points()).isCloseTo(stability, within(0.6));
    }

    @ParameterizedTest
    @CsvSource({
        // Common practice, no source: Wren stands, 910 mm at 84 kg, 950 mm on the canoe (+ 40 mm, rounded).
        "b1,STAND,-50,42",
        "b3,STAND,-70,29",
        "b4,STAND,-70,29",
        "b2,STAND,-60,35",
        // 860 mm seated in the canoe, plus 10 mm at 84 kg.
        "b2,FISH_SEATED,20,87"
    })
    void agreesWithExampleStability(String id, PaddlingUse use, double marginMm, double points) {
        FitScore.Scored stability = assess(ExampleBoats.byId(id), Setting.unknown(), wren(use, null))
                .people()
                .getFirst()
                .scored("stability")
                .orElseThrow();
        assertThat(stability.measure()).isCloseTo(marginMm, within(1e-6));
        assertThat(stability.points()).isCloseTo(points, within(0.8));
    }

    @Test
    void agreesWithExampleForTheLighterPersonInTheCanoe() {
        // Common practice, no source: 890 - 860 = 30 mm, 91 points.
        FitScore.Scored stability = assess(ExampleBoats.CANOE, Setting.unknown(), alder(null))
                .people()
                .getFirst()
                .scored("stability")
                .orElseThrow();
        assertThat(stability.measure()).isCloseTo(30, within(1e-6));
        assertThat(stability.points()).isCloseTo(91, within(0.5));
    }

    @Test
    void agreesWithExamplePersonFit() {
        // Common practice, no source: seat points 90 and 70 on the propeller boat give 91 and 73, each person apart.
        Boat boat = ExampleBoats.PROPELLER;
        double seat = boat.seats().getFirst().widthM().value();
        Paddler wren = wren(PaddlingUse.STAND, seat - 0.032); // 32 mm wider: 90 points
        Paddler alder = alder(seat - 0.0175); // 17.5 mm: 70 points
        FitAssessment fit = assess(boat, setting(12.0, null, null), wren, alder);
        assertThat(fit.people().getFirst().points().orElseThrow()).isCloseTo(91, within(1.0));
        assertThat(fit.people().getLast().points().orElseThrow()).isCloseTo(73, within(1.0));
        assertThat(fit.worstPerson().orElseThrow())
                .isEqualTo(fit.people().getLast().points().orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({
        // Common practice, no source: 0.7 main + 0.3 hardest.
        "b1,LAKE_CHOP,SLOW_RIVER,74.0",
        "b2,LAKE_CHOP,SLOW_RIVER,65.5",
        "b4,LAKE_CHOP,SLOW_RIVER,74.0",
        "b5,POND,LAKE_CHOP,81.0",
        "b6,POND,LAKE_CHOP,84.5",
        "b6,POND,,95"
    })
    void agreesWithExampleWaters(String id, Waters main, @Nullable Waters hardest, double points) {
        FitAssessment fit = assess(ExampleBoats.byId(id), setting(null, main, hardest));
        assertThat(fit.waterPoints().orElseThrow()).isCloseTo(points, within(1e-9));
    }

    @Test
    void takesALongSitInsideForATouringKayak() {
        Boat tourer = ExampleBoats.boat(
                BoatKind.SIT_INSIDE, HullMaterial.GLASS_LAMINATE, DriveKind.NONE, 5.0, 0.58, 23, 0.5, 0, 145);
        assertThat(CATALOGUE.waterMatch(tourer).id()).isEqualTo("sink-touring");
        assertThat(CATALOGUE.waterMatch(ExampleBoats.usual(BoatKind.SIT_INSIDE)).id())
                .isEqualTo("sink-recreational");
    }

    @ParameterizedTest
    // Common practice, no source: worst of store, car, roof and bars; couple: shed 4.3 m, car 4.6 m, bars 0.95 m.
    @CsvSource({"b1,0.68,82", "b2,0.39,0", "b3,0.65,78", "b4,0.55,84"})
    void agreesWithExampleRoomForTheCouple(String id, double roof, double points) {
        FitAssessment fit = assess(ExampleBoats.byId(id), place(4.3, null, 4.6, roof, 0.95, null));
        assertThat(fit.placePoints().orElseThrow()).isCloseTo(points, within(1.5));
    }

    @Test
    void agreesWithExampleRoomForTheBag() {
        // Common practice, no source: 95 points for an inflatable of 15.5 kg in its bag.
        FitAssessment fit = assess(ExampleBoats.INFLATABLE, place(3.0, null, 3.9, null, null, null));
        assertThat(fit.placePoints().orElseThrow()).isCloseTo(95, within(1.0));
        assertThat(fit.dealBreakers()).isEmpty();
    }

    @Test
    void rulesOutABoatLongerThanTheRoomUnlessItCanLiveElsewhere() {
        FitAssessment fit = assess(ExampleBoats.CANOE, place(4.3, null, 4.6, 0.39, 0.95, null));
        assertThat(fit.dealBreakers()).singleElement().satisfies(score -> {
            assertThat(score.row().id()).isEqualTo("store-length");
            assertThat(score.dealBreaker().orElseThrow()).contains("-730 mm");
        });
        assertThat(assess(ExampleBoats.CANOE, place(4.3, true, 4.6, 0.39, 0.95, null))
                        .dealBreakers())
                .isEmpty();
    }

    @Test
    void rulesOutAnOverloadedRoofUnlessATrailerIsThere() {
        assertThat(assess(ExampleBoats.PROPELLER, place(null, null, null, 1.1, null, null))
                        .dealBreakers())
                .hasSize(1);
        assertThat(assess(ExampleBoats.PROPELLER, place(null, null, null, 1.1, null, true))
                        .dealBreakers())
                .isEmpty();
    }

    @Test
    void rulesOutNobodyByWhatWasOnlyAssumedAboutThem() {
        // 128 kg in a boat rated for 136 uses 94 %; 86 cm of beam is far too narrow for somebody of 150 kg who stands
        Paddler heavy = new Paddler("Robin", 128.0, null, null, null, true, false);
        Paddler standing = new Paddler("Robin", 150.0, null, null, PaddlingUse.STAND, false, true);

        assertThat(assess(ExampleBoats.SIT_ON_TOP, Setting.unknown(), heavy)
                        .people()
                        .getFirst()
                        .dealBreakers())
                .isEmpty();
        assertThat(assess(ExampleBoats.PROPELLER, Setting.unknown(), standing)
                        .people()
                        .getFirst()
                        .scored("stability")
                        .orElseThrow()
                        .dealBreaker())
                .isEmpty();
    }

    @Test
    void rulesOutByTheKnownPartOfALoadAlone() {
        Paddler known = new Paddler("Robin", 128.0, null, null, null);
        Paddler assumed = new Paddler("Kim", 78.0, null, null, null, true, false);

        assertThat(assess(ExampleBoats.CANOE, Setting.unknown(), known, assumed)
                        .people()
                        .getFirst()
                        .dealBreakers())
                .isEmpty();
        assertThat(assess(ExampleBoats.SIT_ON_TOP, setting(0.0, null, null), known, assumed)
                        .people()
                        .getFirst()
                        .dealBreakers())
                .hasSize(1);
    }

    @Test
    void isNeverLightenedByOneMorePerson() {
        // two seats: 128 and 84 kg go together, whoever else would like to come
        Paddler robin = new Paddler("Robin", 128.0, null, null, null);
        Paddler wren = new Paddler("Wren", 84.0, null, null, null);
        Paddler alder = new Paddler("Alder", 58.0, null, null, null);
        Setting none = Setting.unknown();

        FitAssessment two = assess(ExampleBoats.CANOE, none, robin, wren);
        FitAssessment three = assess(ExampleBoats.CANOE, none, robin, wren, alder);

        assertThat(three.people().getFirst().aboardKg()).hasValue(212);
        assertThat(three.people().getFirst().aboardKg())
                .isEqualTo(two.people().getFirst().aboardKg());
        assertThat(three.people().getLast().aboardKg()).hasValue(186);
    }

    @Test
    void rulesOutAnOverloadedBoat() {
        Paddler heavy = new Paddler("Robin", 128.0, null, null, null);
        assertThat(assess(ExampleBoats.SIT_ON_TOP, Setting.unknown(), heavy)
                        .people()
                        .getFirst()
                        .dealBreakers())
                .singleElement()
                .satisfies(
                        score -> assertThat(score.dealBreaker().orElseThrow()).contains("94 %"));
    }

    @Test
    void neverRulesOutByAnAssumption() {
        Paddler heavy = new Paddler("Robin", 150.0, null, null, PaddlingUse.STAND);
        PersonFit fit = assess(ExampleBoats.usual(BoatKind.SIT_ON_TOP), Setting.unknown(), heavy)
                .people()
                .getFirst();
        assertThat(fit.scored("capacity-used").orElseThrow().assumed()).isTrue();
        assertThat(fit.scored("capacity-used").orElseThrow().points()).isZero();
        assertThat(fit.dealBreakers()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(BoatKind.class)
    void livesWithKnowingNothing(BoatKind kind) {
        FitAssessment fit = assess(ExampleBoats.usual(kind), Setting.unknown(), Paddler.named("Kim"));
        assertThat(fit.people().getFirst().points()).isEmpty();
        assertThat(fit.people().getFirst().unknown()).isNotEmpty();
        assertThat(fit.waterPoints()).isEmpty();
        assertThat(fit.speed().kmPerH()).isPositive();
        assertThat(fit.scored("setup")).isPresent();
    }

    @Test
    void countsAnAddedMotorAsLoad() {
        Boat motor = ExampleBoats.boat(
                BoatKind.CANOE, HullMaterial.POLYETHYLENE_FOAM_CORE, DriveKind.MOTOR, 4.7, 0.91, 35, 0, 6, 390);
        PersonFit fit = assess(motor, Setting.unknown(), alder(null)).people().getFirst();
        assertThat(fit.scored("capacity-used").orElseThrow().measure()).isCloseTo((58.0 + 6 + 0) / 390, within(0.04));
        assertThat(fit.scored("capacity-used").orElseThrow().measure()).isGreaterThan(58.0 / 390);
    }

    @Test
    void takesMeasuresTakenInTheBoat() {
        Aboard seated =
                new Aboard(alder(null), null, null, Map.of("leg-room", 15.0, "reentry", 60.0, "cockpit-exit", -40.0));
        Boat sink = ExampleBoats.usual(BoatKind.SIT_INSIDE);
        PersonFit fit = FitAssessment.of(CATALOGUE, sink, List.of(seated), Setting.unknown(), METRIC)
                .people()
                .getFirst();
        assertThat(fit.scored("leg-room").orElseThrow().points()).isCloseTo(67.5, within(1e-9));
        assertThat(fit.scored("reentry").orElseThrow().points()).isCloseTo(85, within(1e-9));
        assertThat(fit.dealBreakers())
                .singleElement()
                .satisfies(score -> assertThat(score.row().id()).isEqualTo("cockpit-exit"));
    }

    @ParameterizedTest
    @CsvSource({"NONE,90", "FINS,85", "PROPELLER,70", "MOTOR,65"})
    void letsWeedCountByDrive(DriveKind drive, double points) {
        Boat boat = ExampleBoats.boat(BoatKind.PEDAL_KAYAK, HullMaterial.POLYETHYLENE, drive, 3.6, 0.86, 40, 3, 5, 200);
        Setting weedy =
                new Setting(null, null, null, 1, 0.6, null, null, null, null, null, null, null, null, null, null, null);
        FitAssessment fit = assess(boat, weedy);
        assertThat(fit.scored("weed-" + drive.code()).orElseThrow().points()).isEqualTo(points);
        assertThat(fit.scored("draught").orElseThrow().measure())
                .isCloseTo(600 - 1000 * boat.draughtM().value(), within(1e-9));
    }

    @Test
    void estimatesSetUpTime() {
        Setting path = new Setting(
                null, null, null, null, null, null, null, null, null, null, null, null, null, 100.0, null, null);
        assertThat(assess(ExampleBoats.SIT_ON_TOP, path)
                        .scored("setup")
                        .orElseThrow()
                        .measure())
                .isEqualTo(6);
        assertThat(assess(ExampleBoats.INFLATABLE, path)
                        .scored("setup")
                        .orElseThrow()
                        .measure())
                .isBetween(12.0, 20.0);
    }

    @Test
    void rejectsImpossiblePeopleAndSettings() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Paddler("Kim", -5.0, null, null, null))
                .withMessageContaining("kg");
        assertThatIllegalArgumentException().isThrownBy(() -> place(-1.0, null, null, null, null, null));
        assertThatIllegalArgumentException().isThrownBy(() -> place(null, null, 0.0, null, null, null));
    }
}
