package org.keelweigh.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.quantity.Estimate;

class InspectionCatalogueTests {

    private static final InspectionCatalogue CATALOGUE = InspectionCatalogue.read(Catalogue.shipped());

    @Test
    void holdsAllChecksAndGrades() {
        assertThat(CATALOGUE.checks()).hasSize(80);
        assertThat(CATALOGUE.checks().stream()
                        .mapToInt(check -> check.grades().size())
                        .sum())
                .isGreaterThanOrEqualTo(215);
        assertThat(CATALOGUE.checks().stream().map(Check::title)).doesNotHaveDuplicates();
    }

    @Test
    void usesEveryZoneGroupAndAgeing() {
        List<Check> checks = CATALOGUE.checks();
        assertThat(EnumSet.copyOf(checks.stream().map(Check::zone).toList())).hasSize(Zone.values().length);
        assertThat(EnumSet.copyOf(checks.stream().map(Check::group).toList())).hasSize(RepairGroup.values().length);
        assertThat(EnumSet.copyOf(checks.stream().map(Check::ageing).toList())).hasSize(Ageing.values().length);
    }

    @Test
    void tellsWhereEveryFigureComesFrom() {
        for (Check check : CATALOGUE.checks()) {
            assertThat(check.source()).as(check.id()).isNotBlank();
            assertThat(check.grades())
                    .allSatisfy(grade -> assertThat(grade.source()).isNotBlank());
        }
    }

    @Test
    void keepsZoneOrderForEachBoat() {
        List<Check> checks =
                CATALOGUE.applicable(boat(BoatKind.PEDAL_KAYAK, HullMaterial.POLYETHYLENE, DriveKind.PROPELLER));
        assertThat(checks).isSortedAccordingTo((a, b) -> a.zone().compareTo(b.zone()));
        assertThat(checks)
                .extracting(Check::id)
                .contains("prop-gears", "scupper-crack")
                .doesNotContain("inf-hold", "gunwale");
    }

    private static Boat boat(BoatKind kind, HullMaterial material, DriveKind drive) {
        return SampleBoats.boat(kind, material, drive);
    }

    // 33 CFR 183 subpart B excepts canoes, kayaks and inflatables from the capacity plate.
    @Test
    void asksForNoCapacityPlateOnKayaks() {
        Check kayak = on(BoatKind.SIT_ON_TOP, HullMaterial.POLYETHYLENE, "capacity-label");
        Check rowing = on(BoatKind.ROWING_BOAT, HullMaterial.GLASS_LAMINATE, "capacity-label");
        assertThat(kayak.grade(Outcome.MINOR)).isEmpty();
        assertThat(kayak.chancesAtFiveYears().fine()).isGreaterThan(0.9);
        assertThat(rowing.grade(Outcome.MINOR)).isPresent();
    }

    private static Check on(BoatKind kind, HullMaterial material, String id) {
        return CATALOGUE.applicable(boat(kind, material, DriveKind.NONE)).stream()
                .filter(check -> check.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void knowsEveryHullMaterial() {
        for (HullMaterial material : HullMaterial.values()) {
            assertThat(CATALOGUE.material(material).wallLeastMm()).isPositive();
            assertThat(CATALOGUE.material(material).joining()).isNotBlank();
        }
    }

    // A check value worked by hand: odds of 0.323 to 0.677 times 2^0.9 for twice the days of use.
    @Test
    void scalesOddsWithUse() {
        Check gears = CATALOGUE.check("prop-gears").orElseThrow();
        double odds = 0.323 / 0.677 * Math.pow(2, 0.9);
        assertThat(CATALOGUE.priorOutcomes(gears, 1, 180).fault()).isCloseTo(odds / (1 + odds), within(1e-9));
        assertThat(CATALOGUE.priorOutcomes(gears, 5, 90)).isEqualTo(gears.chancesAtFiveYears());
    }

    @Test
    void rejectsNegativeAge() {
        Check sun = CATALOGUE.check("hull-uv").orElseThrow();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CATALOGUE.priorOutcomes(sun, -1, 90))
                .withMessageContaining("0 years or more");
    }

    // Common practice, no source: a whole pedal drive costs 800-1000 USD, its upper gearbox 160-170, its lower 110.
    @Test
    void pricesDrivesAsTheTradeDoes() {
        assertThat(cost("prop-gears", Outcome.STOP)).isEqualTo(new Estimate(800, 900, 1000));
        assertThat(cost("drive-water", Outcome.STOP)).isEqualTo(new Estimate(800, 900, 1000));
        Estimate gears = cost("prop-gears", Outcome.MAJOR);
        assertThat(gears.low()).isEqualTo(110);
        assertThat(gears.likely()).isBetween(110.0 + 160, 110.0 + 170);
        assertThat(gears.high()).isLessThan(800);
        for (Check check : CATALOGUE.checks()) {
            if (check.group() == RepairGroup.DRIVE_INTERNAL) {
                assertThat(check.grades())
                        .allSatisfy(
                                grade -> assertThat(grade.repairCost().high()).isLessThanOrEqualTo(1000));
            }
        }
    }

    // Common practice, no source: a replacement seat costs 200-400 USD.
    @Test
    void pricesSeatsAsTheTradeDoes() {
        Estimate frame = cost("seat-frame", Outcome.MAJOR);
        assertThat(frame.low()).isEqualTo(200);
        assertThat(frame.high()).isEqualTo(400);
        assertThat(cost("seat-fabric", Outcome.MAJOR).high()).isEqualTo(400);
    }

    private static Estimate cost(String check, Outcome outcome) {
        return CATALOGUE.check(check).orElseThrow().grade(outcome).orElseThrow().repairCost();
    }

    /** A measure that no result is told by would be asked for in vain; one in another unit would be misread. */
    @ParameterizedTest
    @CsvSource({"MILLIMETRE, ' mm'", "MILLILITRE, ' ml'", "DEGREE, ' degrees'", "PERCENT, %", "YEAR, ' years'"})
    void measuresInTheUnitOfTheWordsThatTellTheResultsApart(ReadingUnit unit, String words) {
        List<Check> measured = CATALOGUE.checks().stream()
                .filter(check -> check.readingUnit().filter(unit::equals).isPresent())
                .toList();

        assertThat(measured).isNotEmpty().allSatisfy(check -> assertThat(check.fineLooksLike()
                        + check.grades().stream().map(Grade::looksLike).collect(Collectors.joining("; ")))
                .contains(words));
    }

    @Test
    void tellsAReadingWithItsUnit() {
        assertThat(CATALOGUE.check("hull-scratch").orElseThrow().told(2)).isEqualTo("measured 2 mm");
        assertThat(CATALOGUE.check("prop-gears").orElseThrow().told(6)).isEqualTo("measured 6°");
        assertThat(CATALOGUE.check("drilled-holes").orElseThrow().told(3)).isEqualTo("counted 3");
        assertThat(CATALOGUE.check("hull-uv").orElseThrow().told(0.125)).isEqualTo("measured 0.13");
    }
}
