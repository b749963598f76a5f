package org.keelweigh.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.keelweigh.catalogue.Catalogue;

class ListingAssessmentTests {

    private static final ListingCatalogue CATALOGUE = ListingCatalogue.read(Catalogue.shipped());

    private static ListingFacts facts(@Nullable Double asking, @Nullable SellerKind seller, Iterable<String> signals) {
        TreeMap<String, Boolean> present = new TreeMap<>();
        signals.forEach(each -> present.put(each, true));
        return new ListingFacts(asking, seller, null, null, new TreeMap<>(), present);
    }

    private static ListingAssessment assess(ListingFacts facts, @Nullable Double fair) {
        return ListingAssessment.of(facts, List.of(), fair, CATALOGUE);
    }

    // Common practice, no source: odds 0.0309 x 8 x 3 x 3 = 2.23, hence 0.69.
    @Test
    void addsUpACheapBoatOfANewAccountWithoutAHullNumber() {
        ListingFacts facts = facts(400.0, SellerKind.PRIVATE, List.of("account-new", "hin-withheld"));
        ListingAssessment listing = assess(facts, 1000.0);
        assertThat(listing.fraud()).isCloseTo(0.69, within(0.005));
        assertThat(listing.verdict()).isEqualTo(ListingVerdict.STOP);
        assertThat(listing.priceShare()).hasValue(0.4);
        assertThat(listing.bestProof().orElseThrow().concernAfter()).isLessThan(listing.concern() / 2);
        assertThat(listing.sentence())
                .contains("signs that often go with fraud")
                .contains("69 %");
    }

    // The same boat with a fresh picture and a number that decodes: 0.0309 x 8 x 3 x 0.35 x 0.08 = 0.0208, hence 0.02;
    // stolen 0.0101 x 6 x 2 x 0.25 x 0.5 = 0.015.
    @Test
    void isTurnedRoundByCheapProof() {
        ListingFacts facts =
                facts(400.0, SellerKind.PRIVATE, List.of("account-new", "hin-withheld", "hin-decodes", "fresh-photo"));
        ListingAssessment listing = assess(facts, 1000.0);
        assertThat(listing.fraud()).isCloseTo(0.0204, within(0.0002));
        assertThat(listing.stolen()).isCloseTo(0.015, within(0.0003));
        assertThat(listing.verdict()).isEqualTo(ListingVerdict.ASK_FOR_PROOF);
        assertThat(listing.reasons()).noneMatch(each -> each.signal().id().equals("hin-withheld"));
    }

    @ParameterizedTest
    @CsvSource({"SHOP, 0.002, 0.001", "CLUB, 0.005, 0.002", "PRIVATE, 0.03, 0.01", "REMOTE, 0.3, 0.01"})
    void startsFromTheRatesOfTheChannel(SellerKind channel, double fraud, double stolen) {
        ListingAssessment listing = assess(facts(null, channel, List.of()), null);
        assertThat(listing.fraud()).isCloseTo(fraud, within(1e-12));
        assertThat(listing.stolen()).isCloseTo(stolen, within(1e-12));
        assertThat(listing.reasons()).isEmpty();
        assertThat(listing.sentence()).startsWith("No sign here");
    }

    @ParameterizedTest
    @CsvSource({
        "0, GO_ON",
        "0.0299, GO_ON",
        "0.03, ASK_FOR_PROOF",
        "0.0999, ASK_FOR_PROOF",
        "0.1, PAPERS_FIRST",
        "0.3, PAPERS_FIRST",
        "0.3001, STOP",
        "1, STOP"
    })
    void setsTheBandsWhereTheyChange(double concern, ListingVerdict verdict) {
        assertThat(ListingVerdict.of(concern)).isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({
        "499, price-under-half",
        "500, price-half-to-seventy",
        "699, price-half-to-seventy",
        "700, price-usual",
        "1300, price-usual"
    })
    void readsTheSignOffThePrice(double asking, String signal) {
        ListingAssessment listing = assess(facts(asking, null, List.of("price-under-half")), 1000.0);
        assertThat(listing.reasons()).extracting(each -> each.signal().id()).containsExactly(signal);
    }

    @Test
    void countsFurtherSignsOfAGroupByHalf() {
        double one = logOdds(
                assess(facts(null, null, List.of("refuses-to-meet")), null).fraud());
        double two = logOdds(assess(facts(null, null, List.of("refuses-to-meet", "odd-payment")), null)
                .fraud());
        assertThat(two - one).isCloseTo(0.5 * Math.log(12), within(1e-9));
    }

    @Test
    void takesFindingsAtTheBoatForSigns() {
        List<Finding> findings =
                List.of(Finding.of("hin-read", Outcome.STOP), Finding.of("owner-papers", Outcome.FINE));
        ListingAssessment listing = ListingAssessment.of(facts(null, null, List.of()), findings, null, CATALOGUE);
        assertThat(listing.reasons())
                .extracting(each -> each.signal().id())
                .containsExactlyInAnyOrder("hin-tampered", "old-papers");
    }

    @Test
    void saysNothingOfSignsLookedForAndNotThere() {
        TreeMap<String, Boolean> absent = new TreeMap<>();
        absent.put("account-new", false);
        ListingFacts facts = new ListingFacts(null, null, null, null, new TreeMap<>(), absent);
        assertThat(assess(facts, null).reasons()).isEmpty();
    }

    @Test
    void neverCallsAnybodyAThief() {
        assertThat(CATALOGUE.signals())
                .allSatisfy(each -> assertThat(each.phrase() + each.settle().orElse(""))
                        .doesNotContainIgnoringCase("thief")
                        .doesNotContainIgnoringCase("scammer"));
        assertThat(CATALOGUE.advice())
                .extracting(ListingCatalogue.Advice::topic)
                .containsOnly("meet", "pay");
        assertThat(CATALOGUE.signals())
                .filteredOn(each -> each.fraudWeight() + each.stolenWeight() > 0)
                .allSatisfy(each -> assertThat(each.settle()).as(each.id()).isPresent());
    }

    @Test
    void rejectsAFairPriceOfNothing() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> assess(facts(1.0, null, List.of()), 0.0))
                .withMessageContaining("fair price");
    }

    @Provide
    Arbitrary<Set<String>> signs() {
        return Arbitraries.of(
                        CATALOGUE.signalsToAsk().stream().map(ListingSignal::id).toList())
                .set()
                .ofMaxSize(8);
    }

    @Property(tries = 200)
    void worriesMoreWithEverySignAgainstAndLessWithEveryProof(@ForAll("signs") Set<String> signs) {
        ListingAssessment before = assess(facts(null, null, signs), null);
        for (ListingSignal each : CATALOGUE.signalsToAsk()) {
            List<String> more = new ArrayList<>(signs);
            more.add(each.id());
            ListingAssessment after = assess(facts(null, null, more), null);
            if (each.fraudRatio() >= 1) {
                assertThat(after.fraud()).as(each.id()).isGreaterThanOrEqualTo(before.fraud() - 1e-12);
                assertThat(after.stolen()).as(each.id()).isGreaterThanOrEqualTo(before.stolen() - 1e-12);
            } else {
                assertThat(after.fraud()).as(each.id()).isLessThanOrEqualTo(before.fraud() + 1e-12);
                assertThat(after.stolen()).as(each.id()).isLessThanOrEqualTo(before.stolen() + 1e-12);
            }
        }
    }

    @Property(tries = 100)
    void doesNotMindTheOrderOfFindingsOrSigns(@ForAll("signs") Set<String> signs, @ForAll long seed) {
        List<Finding> findings = new ArrayList<>(List.of(
                Finding.of("hin-read", Outcome.FINE),
                Finding.of("photo-match", Outcome.STOP),
                Finding.of("viewing-terms", Outcome.STOP)));
        List<String> shuffled = new ArrayList<>(signs);
        Collections.shuffle(shuffled, new Random(seed));
        ListingAssessment one = ListingAssessment.of(facts(null, null, signs), findings, null, CATALOGUE);
        Collections.shuffle(findings, new Random(seed));
        ListingAssessment other = ListingAssessment.of(facts(null, null, shuffled), findings, null, CATALOGUE);
        assertThat(other).isEqualTo(one);
    }

    private static double logOdds(double chance) {
        return Math.log(chance / (1 - chance));
    }
}
