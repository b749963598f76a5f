package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.ListingFacts;
import org.keelweigh.condition.Outcome;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.ShortlistId;

class AppraiserTests {

    private static final Appraiser APPRAISER = new Appraiser(Catalogues.read(Catalogue.shipped()));
    private static final int YEAR = 2026;
    private static final ShortlistId LIST = ShortlistId.fresh();

    static Facts facts(CandidateData... boats) {
        return new Facts(
                new Shortlist(LIST, 0, ShortlistData.named("Test")),
                List.of(),
                Arrays.stream(boats)
                        .map(each -> new Candidate(CandidateId.fresh(), LIST, 0, each))
                        .toList());
    }

    static CandidateData priced(String name, BoatKind kind, double price) {
        return CandidateData.of(name, kind)
                .withListing(new ListingFacts(price, null, null, null, new TreeMap<>(), new TreeMap<>()));
    }

    @Test
    void answersThoughNearlyEverythingIsUnknown() {
        Measured measured = APPRAISER.measure(
                facts(priced("Dear", BoatKind.SIT_ON_TOP, 700), priced("Cheap", BoatKind.SIT_ON_TOP, 500)), YEAR);

        Answer answer = Answers.of(measured, measured.perspectives().getFirst());

        assertThat(answer.leader()).hasValue(1);
    }

    @Test
    void measuresEveryKindOfBoat() {
        for (BoatKind kind : BoatKind.values()) {
            Measured measured = APPRAISER.measure(facts(priced("One", kind, 700)), YEAR);
            assertThat(measured.boats().getFirst().measures().getFirst())
                    .hasSize(14)
                    .allMatch(Double::isFinite);
        }
    }

    @Test
    void rulesOutABoatWithAStopFindingWhateverItsValue() {
        Measured measured = APPRAISER.measure(
                facts(
                        priced("Ruined", BoatKind.SIT_ON_TOP, 10).withFinding(Finding.of("hin-read", Outcome.STOP)),
                        priced("Sound", BoatKind.SIT_ON_TOP, 900)),
                YEAR);

        assertThat(measured.boats().getFirst().ruledOut()).isTrue();
        assertThat(Answers.of(measured, measured.perspectives().getFirst()).leader())
                .hasValue(1);
    }

    @Test
    void measuresOnlyTheBoatThatChanged() {
        Facts before = facts(priced("One", BoatKind.SIT_ON_TOP, 700), priced("Two", BoatKind.CANOE, 500));
        Measured first = APPRAISER.measure(before, YEAR);
        Candidate two = before.candidates().get(1);
        Candidate mended = new Candidate(
                two.id(), two.shortlist(), 1, two.data().withFinding(Finding.of("hull-crack", Outcome.MAJOR)));
        Facts after = new Facts(
                before.shortlist(), List.of(), List.of(before.candidates().get(0), mended));

        Measured second = APPRAISER.measure(after, YEAR, first);

        assertThat(second.boats().get(0)).isSameAs(first.boats().get(0));
        assertThat(second.boats().get(1).cost().presentValue())
                .isGreaterThan(first.boats().get(1).cost().presentValue());
        assertThat(second.boats().get(1).measures())
                .isEqualTo(APPRAISER.measure(after, YEAR).boats().get(1).measures());
    }

    @Test
    void givesTheSameMeasuresForTheSameFacts() {
        Facts facts = facts(priced("One", BoatKind.PEDAL_KAYAK, 700), priced("Two", BoatKind.CANOE, 500));

        assertThat(APPRAISER.measure(facts, YEAR).boats().get(0).measures())
                .isEqualTo(APPRAISER.measure(facts, YEAR).boats().get(0).measures());
    }

    @Test
    void givesTheSameAnswerUnderOtherIdentifiers() {
        CandidateData one = priced("One", BoatKind.PEDAL_KAYAK, 700);
        CandidateData two = priced("Two", BoatKind.CANOE, 500);

        Measured here = APPRAISER.measure(facts(one, two), YEAR);
        Measured elsewhere = APPRAISER.measure(facts(one, two), YEAR);

        assertThat(elsewhere.boats().getFirst().id())
                .isNotEqualTo(here.boats().getFirst().id());
        assertThat(elsewhere.boats().getFirst().futures().p90())
                .isEqualTo(here.boats().getFirst().futures().p90());
    }

    @Test
    void drawsApartForBoatsOfTheSameName() {
        CandidateData same = priced("Same", BoatKind.PEDAL_KAYAK, 700);

        Measured measured = APPRAISER.measure(facts(same, same), YEAR);

        assertThat(measured.boats().get(0).futures().presentValue(0))
                .isNotEqualTo(measured.boats().get(1).futures().presentValue(0));
    }
}
