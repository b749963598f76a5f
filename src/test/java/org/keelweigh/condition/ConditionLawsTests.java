package org.keelweigh.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.quantity.Estimate;

class ConditionLawsTests {

    private static final InspectionCatalogue CATALOGUE = InspectionCatalogue.read(Catalogue.shipped());
    private static final Boat PEDAL =
            SampleBoats.boat(BoatKind.PEDAL_KAYAK, HullMaterial.POLYETHYLENE, DriveKind.PROPELLER);
    private static final List<Outcome> FAULTS = List.of(Outcome.MINOR, Outcome.MAJOR, Outcome.STOP);

    @Provide
    Arbitrary<List<Finding>> findings() {
        List<String> ids = CATALOGUE.checks().stream().map(Check::id).toList();
        Arbitrary<Estimate> quote =
                Arbitraries.integers().between(0, 900).map(likely -> new Estimate(likely / 2.0, likely, likely * 2));
        Arbitrary<Finding> finding = Combinators.combine(
                        Arbitraries.of(ids),
                        Arbitraries.of(Outcome.class),
                        Arbitraries.of(Method.class),
                        quote.injectNull(0.8))
                .as((id, outcome, method, price) -> new Finding(id, outcome, method, null, null, price));
        return finding.list().ofMaxSize(30);
    }

    @Provide
    Arbitrary<Check> checks() {
        return Arbitraries.of(CATALOGUE.applicable(PEDAL));
    }

    @Property(tries = 200)
    void doesNotCareForTheOrderOfFindings(@ForAll("findings") List<Finding> findings, @ForAll long seed) {
        List<Finding> shuffled = new ArrayList<>(findings);
        Collections.shuffle(shuffled, new Random(seed));
        assertThat(assess(shuffled)).isEqualTo(assess(findings));
    }

    @Property(tries = 300)
    void neverSpendsLessOnAWorseOutcome(
            @ForAll("findings") List<Finding> others, @ForAll("checks") Check check, @ForAll Method method) {
        // gear that is not fit for use is no repair: it is bought with the rest of the kit
        Assume.that(!Set.of("pfd", "paddle", "cart-check").contains(check.id()));
        double known = 0;
        double all = 0;
        for (Outcome outcome : FAULTS) {
            List<Finding> findings = new ArrayList<>(others);
            findings.removeIf(finding -> finding.check().equals(check.id()));
            findings.add(new Finding(check.id(), outcome, method, null, null, null));
            ConditionAssessment assessed = assess(findings);
            assertThat(assessed.knownRepairs().likely()).isGreaterThanOrEqualTo(known - 1e-9);
            assertThat(assessed.expectedRepairs()).isGreaterThanOrEqualTo(all - 1e-9);
            known = assessed.knownRepairs().likely();
            all = assessed.expectedRepairs();
        }
    }

    @Property
    void alwaysTellsADistribution(
            @ForAll("checks") Check check,
            @ForAll @DoubleRange(min = 0, max = 80) double ageYears,
            @ForAll @DoubleRange(min = 0, max = 5_000) double useDays,
            @ForAll Method method) {
        OutcomeChances prior = CATALOGUE.priorOutcomes(check, ageYears, useDays);
        assertThat(prior.fine() + prior.minor() + prior.major() + prior.stop()).isCloseTo(1, within(1e-12));
        OutcomeChances after = CATALOGUE.afterReportedFine(check, prior, method);
        assertThat(after.fault()).isBetween(0.0, prior.fault() + 1e-12);
    }

    @Property
    void growsLikelierToFailWithAgeAndUse(
            @ForAll("checks") Check check,
            @ForAll @DoubleRange(min = 0, max = 40) double ageYears,
            @ForAll @DoubleRange(min = 0, max = 40) double more) {
        double younger = CATALOGUE.priorOutcomes(check, ageYears, 18 * ageYears).fault();
        double older = CATALOGUE
                .priorOutcomes(check, ageYears + more, 18 * (ageYears + more))
                .fault();
        assertThat(older).isGreaterThanOrEqualTo(younger - 1e-12);
    }

    @Property(tries = 200)
    void spreadsHiddenRepairsOverRisingSpends(@ForAll("findings") List<Finding> findings) {
        for (HiddenRepairs.Spread spread : assess(findings).hidden().groups()) {
            assertThat(spread.steps().stream()
                            .mapToDouble(HiddenRepairs.Step::chance)
                            .sum())
                    .isCloseTo(1, within(1e-12));
            assertThat(spread.steps())
                    .allSatisfy(step -> assertThat(step.spend()).isNotNegative());
            assertThat(spread.steps()).isSortedAccordingTo((a, b) -> Double.compare(a.spend(), b.spend()));
        }
    }

    @Property(tries = 200)
    void keepsSharesBetweenTheirBounds(@ForAll("findings") List<Finding> findings) {
        ConditionAssessment assessed = assess(findings);
        assertThat(assessed.resaleLossIfLeft()).isBetween(0.0, 0.7);
        assertThat(assessed.resaleLossExpected()).isBetween(0.0, assessed.resaleLossIfLeft() + 1e-12);
        assertThat(assessed.progress().evidenceShare()).isBetween(0.0, 1.0);
        assertThat(assessed.hidden().stopChance()).isBetween(0.0, 1.0);
    }

    private static ConditionAssessment assess(List<Finding> findings) {
        return ConditionAssessment.of(CATALOGUE, PEDAL, 6, 100, findings);
    }
}
