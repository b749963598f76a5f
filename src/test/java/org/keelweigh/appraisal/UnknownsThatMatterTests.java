package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Outcome;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.FieldPath;

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
                    assertThat(each.low().value()).isEqualTo("8 outings a year");
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
}
