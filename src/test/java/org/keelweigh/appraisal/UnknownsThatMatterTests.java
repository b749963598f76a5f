package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Outcome;
import org.keelweigh.fit.PaddlingUse;
import org.keelweigh.fit.Waters;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.FieldPath;
import org.keelweigh.shortlist.Person;

class UnknownsThatMatterTests {

    private static final Appraiser APPRAISER = new Appraiser(Catalogues.read(Catalogue.shipped()));
    private static final int YEAR = 2026;

    private static CandidateData with(CandidateData boat, String path, Object value) {
        return new FieldPath(path).with(boat, value);
    }

    private static Optional<UnknownsThatMatter> find(Facts facts) {
        return UnknownsThatMatter.find(APPRAISER, facts, YEAR, share -> {});
    }

    @Test
    void ranksByTheSwingOfTheLeadAndNamesBothEnds() {
        Facts facts = AppraiserTests.facts(
                AppraiserTests.priced("Green", BoatKind.SIT_ON_TOP, 500),
                AppraiserTests.priced("Red", BoatKind.SIT_ON_TOP, 700));

        UnknownsThatMatter found = find(facts).orElseThrow();

        assertThat(found.leader()).isEqualTo("Green");
        assertThat(found.runnerUp()).isEqualTo("Red");
        assertThat(found.margin()).isPositive();
        assertThat(found.unknowns())
                .extracting(UnknownsThatMatter.Unknown::swing)
                .isSortedAccordingTo((a, b) -> Double.compare(b, a));
        assertThat(found.unknowns())
                .filteredOn(each -> each.field().equals("trip.outingsPerYear"))
                .singleElement()
                .satisfies(each -> {
                    assertThat(each.assumed()).isEqualTo("15 outings a year");
                    assertThat(each.sort()).isEqualTo(UnknownsThatMatter.Sort.FIGURE);
                    assertThat(each.tried())
                            .extracting(UnknownsThatMatter.Tried::value)
                            .containsExactly("8 outings a year", "23 outings a year");
                    assertThat(each.boat()).isEmpty();
                });
    }

    @Test
    void doesNotAskForWhatIsKnown() {
        CandidateData known = with(AppraiserTests.priced("Green", BoatKind.SIT_ON_TOP, 500), "boat.bareMassKg", 22.0);
        Facts facts = AppraiserTests.facts(known, AppraiserTests.priced("Red", BoatKind.SIT_ON_TOP, 700));

        List<String> names = find(facts).orElseThrow().unknowns().stream()
                .map(UnknownsThatMatter.Unknown::name)
                .toList();

        assertThat(names).contains("Red: mass of the hull").doesNotContain("Green: mass of the hull", "Green: price");
    }

    @Test
    void tellsWhatWouldChangeTheLeader() {
        CandidateData unpriced = CandidateData.of("Green", BoatKind.SIT_ON_TOP);
        UnknownsThatMatter alike = find(AppraiserTests.facts(unpriced, CandidateData.of("Red", BoatKind.SIT_ON_TOP)))
                .orElseThrow();

        assertThat(alike.unknowns())
                .filteredOn(UnknownsThatMatter.Unknown::changesLeader)
                .isNotEmpty()
                .allSatisfy(each -> assertThat(each.worse().margin()).isNegative());
    }

    @Test
    void saysNothingWhereThereIsNoChoice() {
        Facts alone = AppraiserTests.facts(CandidateData.of("Green", BoatKind.SIT_ON_TOP));
        Facts oneLeft = AppraiserTests.facts(
                CandidateData.of("Green", BoatKind.SIT_ON_TOP),
                CandidateData.of("Red", BoatKind.SIT_ON_TOP).withFinding(Finding.of("hin-read", Outcome.STOP)));

        assertThat(find(alone)).isEmpty();
        assertThat(find(oneLeft)).isEmpty();
    }

    @Test
    void tellsHowFarItHasCome() {
        List<Double> shares = new ArrayList<>();
        Facts facts = AppraiserTests.facts(
                CandidateData.of("Green", BoatKind.SIT_ON_TOP), CandidateData.of("Red", BoatKind.SIT_ON_TOP));

        UnknownsThatMatter.find(APPRAISER, facts, YEAR, shares::add);

        assertThat(shares).isSorted().last().isEqualTo(1.0);
    }

    @Test
    void findsTheSameAgain() {
        Facts facts = AppraiserTests.facts(
                CandidateData.of("Green", BoatKind.SIT_ON_TOP), CandidateData.of("Red", BoatKind.SIT_ON_TOP));

        assertThat(find(facts)).isEqualTo(find(facts));
    }

    private static UnknownsThatMatter.Unknown unknown(Facts facts, String field) {
        return find(facts).orElseThrow().unknowns().stream()
                .filter(each -> each.field().equals(field))
                .findFirst()
                .orElseThrow();
    }

    private static Facts byWeightOf(String criterion, CandidateData... boats) {
        return Samples.facts(List.of(Samples.person("Ann", criterion)), boats);
    }

    /** Only the lift counts. Red is a little lighter than polyethylene usually is, and a good deal heavier than carbon. */
    @Test
    void namesTheMaterialThatWouldChangeTheLeader() {
        CandidateData red = with(
                with(AppraiserTests.priced("Red", BoatKind.SIT_INSIDE, 500), "boat.material", "pe1"),
                "boat.bareMassKg",
                assumedMass() - 1);
        Facts facts = byWeightOf("lift", AppraiserTests.priced("Green", BoatKind.SIT_INSIDE, 500), red);

        assertThat(find(facts).orElseThrow().leader()).isEqualTo("Red");
        UnknownsThatMatter.Unknown material = unknown(facts, "boat.material");
        assertThat(material.name()).isEqualTo("Green: material");
        assertThat(material.sort()).isEqualTo(UnknownsThatMatter.Sort.CHOICE);
        assertThat(material.assumed()).isEqualTo("single-layer polyethylene");
        assertThat(material.changesLeader()).isTrue();
        assertThat(material.changers().getFirst().value()).isEqualTo("carbon laminate");
        assertThat(material.changers())
                .extracting(UnknownsThatMatter.Tried::value)
                .doesNotContain("single-layer polyethylene", "three-layer polyethylene with foam core");
    }

    private static double assumedMass() {
        return APPRAISER
                .measure(AppraiserTests.facts(CandidateData.of("Any", BoatKind.SIT_INSIDE)), YEAR)
                .boats()
                .getFirst()
                .boat()
                .bareMassKg()
                .value();
    }

    /** The lead told for a choice is the one that the boats have when somebody makes that choice. */
    @Test
    void tellsTheLeadThatEachWaterWouldGive() {
        Facts facts = byWeightOf(
                "fit-water",
                AppraiserTests.priced("Green", BoatKind.SIT_INSIDE, 500),
                AppraiserTests.priced("Red", BoatKind.CANOE, 500));
        UnknownsThatMatter found = find(facts).orElseThrow();
        UnknownsThatMatter.Unknown water = unknown(facts, "trip.mainWater");

        assertThat(water.tried()).hasSize(Waters.values().length);
        assertThat(water.tried().getFirst())
                .isEqualTo(new UnknownsThatMatter.Tried(Waters.POND.label(), found.margin()));
        for (Waters each : Waters.values()) {
            Facts chosen = Supposition.shortlist(facts, "trip.mainWater", each.code());
            Perspective perspective =
                    APPRAISER.measure(chosen, YEAR).perspectives().getFirst();
            int leader = found.leader().equals("Green") ? 0 : 1;
            double lead =
                    perspective.ranking().total(leader) - perspective.ranking().total(1 - leader);
            boolean bothLeft = !perspective.ruledOut(0) && !perspective.ruledOut(1);
            double told = water.tried().stream()
                    .filter(tried -> tried.value().equals(each.label()))
                    .findFirst()
                    .orElseThrow()
                    .margin();
            if (bothLeft) {
                assertThat(told).isCloseTo(lead, within(1e-9));
            } else {
                assertThat(Math.abs(told)).isIn(0.0, 100.0);
            }
        }
    }

    @Test
    void triesWhatEachBoatCouldBeDrivenBy() {
        Facts facts = AppraiserTests.facts(
                AppraiserTests.priced("Pedals", BoatKind.PEDAL_KAYAK, 900),
                with(AppraiserTests.priced("Known", BoatKind.PEDAL_KAYAK, 900), "boat.drive", "fins"),
                AppraiserTests.priced("Paddles", BoatKind.CANOE, 900));

        List<UnknownsThatMatter.Unknown> drives = find(facts).orElseThrow().unknowns().stream()
                .filter(each -> each.field().equals("boat.drive"))
                .toList();

        assertThat(drives)
                .extracting(UnknownsThatMatter.Unknown::name)
                .containsExactlyInAnyOrder("Pedals: drive", "Paddles: drive");
        assertThat(drives).allSatisfy(each -> assertThat(each.tried())
                .extracting(UnknownsThatMatter.Tried::value)
                .containsExactlyElementsOf(
                        each.name().startsWith("Pedals")
                                ? List.of(
                                        "pedals with a propeller",
                                        "paddle or oars only",
                                        "pedals with fins",
                                        "electric motor")
                                : List.of("paddle or oars only", "electric motor")));
    }

    @Test
    void asksForEveryChoiceThatNobodyMadeAndNoOther() {
        CandidateData known = with(
                with(
                        with(AppraiserTests.priced("Green", BoatKind.SIT_ON_TOP, 500), "boat.material", "pe3"),
                        "boat.drive",
                        "none"),
                "listing.seller",
                "shop");
        Person ann = Samples.person("Ann", "cost");
        Facts unknown = Samples.facts(List.of(ann), known, AppraiserTests.priced("Red", BoatKind.SIT_ON_TOP, 700));
        Facts said = unknown;
        for (String[] each :
                new String[][] {{"trip.mainWater", "pond"}, {"trip.hardestWater", "pond"}, {"trip.storage", "indoors"}
                }) {
            said = Supposition.shortlist(said, each[0], each[1]);
        }
        said = Supposition.shortlist(said, "trip.weedLevel", 1);
        said = Supposition.shortlist(said, "trip.car.hasBars", true);
        said = Supposition.shortlist(said, "trip.car.canTow", false);

        assertThat(choices(unknown))
                .containsExactlyInAnyOrder(
                        "Red: material",
                        "Red: drive",
                        "Red: seller",
                        "main water",
                        "hardest water",
                        "weed",
                        "where it lives",
                        "roof bars",
                        "the car's hitch",
                        "surface from car to water",
                        "Ann: kind of use");
        assertThat(choices(said))
                .containsExactlyInAnyOrder(
                        "Red: material", "Red: drive", "Red: seller", "surface from car to water", "Ann: kind of use");
    }

    private static List<String> choices(Facts facts) {
        return find(facts).orElseThrow().unknowns().stream()
                .filter(each -> each.sort() == UnknownsThatMatter.Sort.CHOICE)
                .map(UnknownsThatMatter.Unknown::name)
                .toList();
    }

    @Test
    void triesEveryKindOfUse() {
        Facts facts = byWeightOf(
                "stability",
                AppraiserTests.priced("Green", BoatKind.SIT_ON_TOP, 500),
                AppraiserTests.priced("Red", BoatKind.SIT_INSIDE, 500));
        String ann = facts.people().getFirst().id().toString();

        UnknownsThatMatter.Unknown use = unknown(facts, "people." + ann + ".use");

        assertThat(use.tried()).hasSize(PaddlingUse.values().length);
        assertThat(use.swing()).isPositive();
    }
}
