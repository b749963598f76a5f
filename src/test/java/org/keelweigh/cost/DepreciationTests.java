package org.keelweigh.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.Coded;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.catalogue.CatalogueException;

class DepreciationTests {

    private static final Depreciation SHIPPED = Depreciation.read(Catalogue.shipped());

    /** Worked by hand from the curves, as a trader would: common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "pedal, pe1, prop, 2650, 6, fair, 934",
        "canoe, aramid, none, 3500, 7, good, 1890",
        "pedal, pe1, fins, 3350, 2, good, 2345",
        "pedal, pe1, fins, 2700, 5, good, 1404",
        "ikayak, ds, none, 1190, 3, good, 536",
        "sot, thermo, none, 1180, 4, good, 602"
    })
    void pricesTheSixExampleBoats(
            String kind, String material, String drive, double priceNew, double age, String state, double fair) {
        assertThat(SHIPPED.fairPrice(boat(kind, material, drive, priceNew, age, state))
                        .amount())
                .isCloseTo(fair, within(0.6));
    }

    /** "A used kayak with honest wear goes for 30 to 40 % under new": common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "sot, pe1, none",
        "sink, pe3, none",
        "sink, thermo, none",
        "sink, frp, none",
        "sink, carbon, none",
        "pedal, pe1, prop",
        "pedal, pe1, fins"
    })
    void asksThirtyToFortyPerCentUnderNewAfterTwoYears(String kind, String material, String drive) {
        double afterTwo = 1 - curve(kind, material, drive).shareAt(2);
        double afterThree = 1 - curve(kind, material, drive).shareAt(3);
        assertThat(afterTwo).isBetween(0.30, 0.40);
        assertThat(afterThree).isBetween(0.35, 0.46);
    }

    @ParameterizedTest
    @CsvSource({
        "pedal, pe1, emotor, electric-kayak",
        "canoe, pe3, emotor, pe-canoe",
        "sot, pe1, fins, pedal-fins",
        "row, wood, none, wood-canoe",
        "canoe, carbon, none, aramid-carbon-canoe",
        "sink, pe1, none, pe-paddle",
        "isup, ds, none, isup"
    })
    void choosesTheCurveByKindMaterialAndDrive(String kind, String material, String drive, String curve) {
        assertThat(curve(kind, material, drive).name()).isEqualTo(curve);
    }

    @Test
    void interpolatesInYearsAndFallsOnAtAConstantRate() {
        RetentionCurve curve = curve("sot", "pe1", "none");
        assertThat(curve.shareAt(0)).isEqualTo(0.82);
        assertThat(curve.shareAt(4)).isCloseTo(0.50, within(1e-12));
        assertThat(curve.shareAt(20)).isEqualTo(0.17);
        assertThat(curve.shareAt(25)).isCloseTo(0.17 * 0.17 / 0.22, within(1e-12));
    }

    @Property
    void neverRisesWithAgeAndStaysPositive(
            @ForAll BoatKind kind,
            @ForAll HullMaterial material,
            @ForAll DriveKind drive,
            @ForAll @DoubleRange(min = 0, max = 60) double age,
            @ForAll @DoubleRange(min = 0, max = 10) double later) {
        RetentionCurve curve = SHIPPED.curve(kind, material, drive);
        assertThat(curve.shareAt(age + later)).isPositive().isLessThanOrEqualTo(curve.shareAt(age) + 1e-12);
    }

    @Property
    void addsUpItsPartsAndNeverFallsBelowNothing(
            @ForAll BoatKind kind,
            @ForAll HullMaterial material,
            @ForAll ConditionClass condition,
            @ForAll @DoubleRange(min = 0, max = 30) double age,
            @ForAll @DoubleRange(min = 0, max = 5000) double repairs) {
        PricedBoat boat = new PricedBoat(
                kind,
                material,
                DriveKind.NONE,
                1500,
                age,
                condition,
                11,
                false,
                true,
                true,
                List.of(new PricedBoat.Extra("cart", 130, true), new PricedBoat.Extra("flag", 20, false)),
                repairs);
        FairPrice fair = SHIPPED.fairPrice(boat);
        assertThat(fair.parts().stream().mapToDouble(FairPrice.Part::amount).sum())
                .isCloseTo(fair.amount(), within(1e-9));
        assertThat(fair.amount()).isNotNegative().isBetween(fair.low(), fair.high());
    }

    @Test
    void capsExtrasAtAQuarterOfTheHull() {
        PricedBoat boat = new PricedBoat(
                BoatKind.SIT_ON_TOP,
                HullMaterial.POLYETHYLENE,
                DriveKind.NONE,
                1000,
                5,
                ConditionClass.GOOD,
                null,
                false,
                false,
                false,
                List.of(new PricedBoat.Extra("sounder", 2000, true)),
                100);
        assertThat(SHIPPED.fairPrice(boat).amount()).isCloseTo(450 * 1.25 - 60, within(1e-9));
    }

    @Test
    void holdsTheFloorInAnyCurrency() {
        assertThat(SHIPPED.fairPrice(boat("sot", "pe1", "none", 500, 20, "good"))
                        .amount())
                .isEqualTo(110);
        assertThat(SHIPPED.inCurrency(2)
                        .fairPrice(boat("sot", "pe1", "none", 500, 20, "fair"))
                        .amount())
                .isCloseTo(2 * 110 * 0.82, within(1e-9));
    }

    @Test
    void sellsAgainForLessWhenOlderOrWorse() {
        double good = resale(8, ConditionClass.GOOD);
        assertThat(resale(12, ConditionClass.GOOD)).isLessThan(good);
        assertThat(resale(8, ConditionClass.POOR)).isLessThan(good);
    }

    @Test
    void tellsFileAndLineOfABrokenTable(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("retention-choice.csv"), "kind,material,drive,curve\n*,*,*,no-such-curve\n");
        assertThatThrownBy(() -> Depreciation.read(Catalogue.withShopFolder(folder)))
                .isInstanceOf(CatalogueException.class)
                .hasMessageContaining("retention-choice.csv, line 2")
                .hasMessageContaining("no-such-curve");
    }

    @Test
    void refusesAnImpossibleAgeOrMonth() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> curve("sot", "pe1", "none").shareAt(-1))
                .withMessageContaining("years");
        assertThatIllegalArgumentException().isThrownBy(() -> boat("sot", "pe1", "none", 0, 1, "good"));
    }

    private static double resale(double age, ConditionClass condition) {
        return SHIPPED.resale(
                BoatKind.SIT_ON_TOP, HullMaterial.POLYETHYLENE, DriveKind.NONE, 1000, age, condition, false);
    }

    private static RetentionCurve curve(String kind, String material, String drive) {
        return SHIPPED.curve(
                Coded.parse(BoatKind.class, kind),
                Coded.parse(HullMaterial.class, material),
                Coded.parse(DriveKind.class, drive));
    }

    private static PricedBoat boat(
            String kind, String material, String drive, double priceNew, double age, String state) {
        return PricedBoat.plain(
                Coded.parse(BoatKind.class, kind),
                Coded.parse(HullMaterial.class, material),
                Coded.parse(DriveKind.class, drive),
                priceNew,
                age,
                Coded.parse(ConditionClass.class, state));
    }
}
