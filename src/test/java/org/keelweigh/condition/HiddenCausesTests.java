package org.keelweigh.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatDefaults;
import org.keelweigh.boat.BoatFacts;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.catalogue.CatalogueException;

class HiddenCausesTests {

    private static final InspectionCatalogue INSPECTIONS = InspectionCatalogue.read(Catalogue.shipped());
    private static final HiddenCauses CAUSES = HiddenCauses.read(Catalogue.shipped(), INSPECTIONS);
    private static final BoatDefaults DEFAULTS = BoatDefaults.read(Catalogue.shipped());
    private static final double AGE_YEARS = 5;
    private static final double USE_DAYS = 90;

    @Test
    void keepsTheCataloguesChancesOfEveryBoatWhenNothingWasObserved() {
        for (BoatKind kind : BoatKind.values()) {
            for (double age : new double[] {1, 5, 22}) {
                Boat boat = boat(kind, null);
                Belief belief = CAUSES.network(boat, age, 18 * age).prior();
                assertThat(belief.checks()).hasSameSizeAs(INSPECTIONS.applicable(boat));
                for (Check each : INSPECTIONS.applicable(boat)) {
                    OutcomeChances wanted = INSPECTIONS.priorOutcomes(each, age, 18 * age);
                    OutcomeChances now = belief.check(each.id()).now();
                    assertThat(now.minor()).as(each.id()).isCloseTo(wanted.minor(), within(1e-10));
                    assertThat(now.majorOrWorse()).as(each.id()).isCloseTo(wanted.majorOrWorse(), within(1e-10));
                }
            }
        }
    }

    /** Common practice, no source: the trade's rule of thumb gives 0.81 and 0.150; see docs/method/belief.md. */
    @Test
    void agreesWithTheRuleOfThumbOnAnUnservicedDrive() {
        Belief belief = believe(
                boat(BoatKind.PEDAL_KAYAK, DriveKind.PROPELLER),
                List.of(),
                Map.of("drive-service-unknown", true, "drive-dark-oil", true));
        assertThat(belief.cause("drive-unserviced").now()).isCloseTo(0.81, within(0.02));
        assertThat(belief.check("prop-gears").now().majorOrWorse()).isCloseTo(0.150, within(0.002));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/oracle/cause-effects.csv", useHeadersInDisplayName = true)
    void showsThePublishedRisksOfEachCauseByItself(
            String cause, String check, double risk, double prior, double ifCause, double ifNot) {
        CauseEffect effect = new CauseEffect(cause, check, risk, 0.5, CauseEffect.Role.FAULT, "estimate");
        HiddenCause known = CAUSES.cause(cause).orElseThrow();
        // The table rounds the prior to three decimals; the grades carry it in full, split as in the catalogue.
        OutcomeChances usual = INSPECTIONS.check(check).orElseThrow().chancesAtFiveYears();
        assertThat(usual.majorOrWorse()).isCloseTo(prior, within(0.0006));
        double factor = effect.oddsFactor(known.prior(), usual);
        BeliefNetwork alone = BeliefNetwork.of(
                List.of(new BeliefNetwork.Cause(cause, known.prior(), 0)),
                List.of(new BeliefNetwork.Signal("proof", cause, 1, 0)),
                new TreeMap<>(Map.of(check, usual)),
                List.of(new BeliefNetwork.Influence(cause, check, Math.sqrt(factor), factor)));
        assertThat(chance(alone, true)).isCloseTo(ifCause, within(0.003));
        assertThat(chance(alone, false)).isCloseTo(ifNot, within(0.001));
    }

    private static double chance(BeliefNetwork network, boolean proof) {
        Belief belief = network.believe(List.of(Evidence.SignalLook.of("proof", proof)));
        return belief.checks().getFirst().now().majorOrWorse();
    }

    @Test
    void tellsTheStoryBehindAHardHatchAndAFadedSeat() {
        Belief belief = believe(
                boat(BoatKind.SIT_ON_TOP, null),
                List.of(Finding.of("hatch-seal", Outcome.MAJOR), Finding.of("seat-fabric", Outcome.MAJOR)),
                Map.of("sun-colour-step", true));
        BoatHistory sun = CAUSES.histories(belief).getFirst();
        assertThat(sun.cause().id()).isEqualTo("sun-outdoors");
        assertThat(sun.cause().now()).isGreaterThan(0.8);
        assertThat(sun.because()).contains("a major finding at the seat fabric", "a major finding at the hatch seals");
        assertThat(sun.consequences())
                .extracting(CheckBelief::id)
                .contains("hull-crack", "hull-uv")
                .doesNotContain("seat-fabric", "storage-signs");
        assertThat(sun.sentence())
                .matches(
                        "a major finding at the seat fabric and a major finding at the hatch seals: stored in the sun, \\d\\d %; "
                                + "sun damage to the hull now \\d\\.\\d times as likely \\(\\d\\d % instead of \\d\\d %\\)");
    }

    /** Common practice, no source: the rule of thumb counts the strongest signal fully and further ones by the power 0.6. */
    @Test
    void agreesWithTheRuleOfThumbOnTheTypicalPairOfSignals() {
        List<Double> ratios = new ArrayList<>();
        for (BoatKind kind : BoatKind.values()) {
            List<CauseSignal> signals = CAUSES.signals(boat(kind, null)).stream()
                    .filter(each -> each.from().isEmpty() && each.ifCause() > each.ifNot())
                    .toList();
            for (CauseSignal one : signals) {
                for (CauseSignal other : signals) {
                    if (one.cause().equals(other.cause()) && one.id().compareTo(other.id()) < 0) {
                        ratios.add(ratioToRuleOfThumb(boat(kind, null), one, other));
                    }
                }
            }
        }
        Collections.sort(ratios);
        assertThat(ratios.get(ratios.size() / 2)).isBetween(0.85, 1.15);
    }

    private static double ratioToRuleOfThumb(Boat boat, CauseSignal one, CauseSignal other) {
        CauseBelief belief = believe(boat, List.of(), Map.of(one.id(), true, other.id(), true))
                .cause(one.cause());
        double weight = belief.now() / (1 - belief.now()) * (1 - belief.before()) / belief.before();
        double first = one.ifCause() / one.ifNot();
        double second = other.ifCause() / other.ifNot();
        return weight / (Math.max(first, second) * Math.pow(Math.min(first, second), 0.6));
    }

    @Test
    void hasNoStoryToTellWhenNothingWasObserved() {
        assertThat(CAUSES.histories(believe(boat(BoatKind.CANOE, null), List.of(), Map.of())))
                .isEmpty();
    }

    @Test
    void countsAFindingInsteadOfItsOwnSign() {
        Boat boat = boat(BoatKind.SIT_ON_TOP, null);
        List<Finding> chalk = List.of(Finding.of("hull-uv", Outcome.MAJOR));
        Belief found = believe(boat, chalk, Map.of());
        Belief both = believe(boat, chalk, Map.of("sun-chalk", true, "sun-colour-step", true));
        assertThat(both.causes()).isEqualTo(found.causes());
    }

    @Test
    void weighsASignOfACheckAsThatCheckComingOutSo() {
        Boat boat = boat(BoatKind.SIT_ON_TOP, null);
        Belief sign = believe(boat, List.of(), Map.of("sun-chalk", true));
        assertThat(sign.evidence()).hasOnlyElementsOfType(Evidence.CheckSign.class);
        assertThat(sign.cause("sun-outdoors").now()).isGreaterThan(0.4);
        assertThat(CAUSES.histories(sign).getFirst().because()).containsExactly("heavy chalk on the hull");
        assertThat(sign.check("hull-uv").now().majorOrWorse()).isGreaterThan(0.7);
        Belief not = believe(boat, List.of(), Map.of("sun-chalk", false));
        assertThat(not.cause("sun-outdoors").now()).isLessThan(0.2);
    }

    @Test
    void passesOverWhatIsNotAboutThisBoat() {
        Belief belief = believe(
                boat(BoatKind.CANOE, null),
                List.of(
                        Finding.of("prop-gears", Outcome.MAJOR),
                        Finding.of("cart-check", Outcome.NOT_FITTED),
                        Finding.of("no-such-check", Outcome.FINE)),
                Map.of("drive-squeak", true, "hin-withheld", true));
        assertThat(belief.evidence()).isEmpty();
    }

    @Test
    void believesLessOfAPictureThanOfATouch() {
        Boat boat = boat(BoatKind.SIT_ON_TOP, null);
        Finding touched = Finding.of("scupper-crack", Outcome.MAJOR);
        Finding pictured = new Finding("scupper-crack", Outcome.MAJOR, Method.LISTING_PHOTOS, null, null, null);
        double byTouch =
                believe(boat, List.of(touched), Map.of()).cause("post-cart").now();
        double byPicture =
                believe(boat, List.of(pictured), Map.of()).cause("post-cart").now();
        assertThat(byPicture).isBetween(0.25, byTouch);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "effects.csv | cause,check,relative_risk,minor_power,role,source | rain,hull-crack,2,0.5,fault,estimate"
                        + " | effects.csv, line 2: there is no cause \"rain\"",
                "effects.csv | cause,check,relative_risk,minor_power,role,source | ramp-dragging,no,2,0.5,fault,estimate"
                        + " | effects.csv, line 2: there is no check \"no\"",
                "effects.csv | cause,check,relative_risk,minor_power,role,source | post-cart,pfd,90,0.5,fault,estimate"
                        + " | effects.csv, line 2: With the relative risk 90.0",
                "signals.csv | signal,cause,phrase,absent,if_cause,if_not,checks,from,source"
                        + " | x,big-impact,a,b,0.5,0.1,pfd,major,estimate | signals.csv, line 2: the signal stands for",
                "signals.csv | signal,cause,phrase,absent,if_cause,if_not,checks,from,source"
                        + " | x,big-impact,a,b,1.5,0.1,,,estimate | signals.csv, line 2: the column if_cause holds 1.5"
            })
    void namesTheLineThatCannotBeUsed(String file, String heading, String line, String complaint, @TempDir Path shop)
            throws IOException {
        Files.writeString(shop.resolve(file), heading + "\n" + line + "\n");
        assertThatExceptionOfType(CatalogueException.class)
                .isThrownBy(() -> HiddenCauses.read(Catalogue.withShopFolder(shop), INSPECTIONS))
                .withMessageStartingWith(complaint);
    }

    private static Belief believe(Boat boat, List<Finding> findings, Map<String, Boolean> looks) {
        return CAUSES.believe(boat, AGE_YEARS, USE_DAYS, findings, looks);
    }

    private static Boat boat(BoatKind kind, @Nullable DriveKind drive) {
        return DEFAULTS.resolve(
                new BoatFacts(
                        kind, null, drive, 2021, null, null, null, null, null, null, null, null, null, null, List.of()),
                2026);
    }
}
