package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.ListingFacts;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.SellerKind;
import org.keelweigh.cost.CostLine;
import org.keelweigh.fit.Waters;
import org.keelweigh.quantity.Estimate;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.FieldPath;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistData;

/** What one boat makes its buyer pay, each sum worked by hand from the shipped tables. */
class OwnershipNeedsTests {

    private static final Appraiser APPRAISER = new Appraiser(Samples.CATALOGUES);
    private static final int YEAR = 2026;

    private static BoatReport report(Map<String, Object> trip, CandidateData boat) {
        ShortlistData data = ShortlistData.named("Test");
        for (Map.Entry<String, Object> each : trip.entrySet()) {
            data = new FieldPath("trip." + each.getKey()).with(data, each.getValue());
        }
        Facts facts = new Facts(
                new Shortlist(Samples.LIST, 0, data),
                List.of(),
                List.of(new Candidate(CandidateId.fresh(), Samples.LIST, 0, boat)));
        return APPRAISER.measure(facts, YEAR).boats().getFirst();
    }

    private static CandidateData boat(BoatKind kind, double price, SellerKind seller, Map<String, Integer> included) {
        return CandidateData.of("One", kind)
                .withListing(new ListingFacts(price, seller, null, null, new TreeMap<>(included), new TreeMap<>()));
    }

    private static CandidateData boat(double price) {
        return boat(BoatKind.SIT_ON_TOP, price, SellerKind.PRIVATE, Map.of());
    }

    private static Finding quoted(String check, Outcome outcome, double quote) {
        return new Finding(check, outcome, Method.TOUCHED, null, null, Estimate.exactly(quote));
    }

    private static CostLine line(BoatReport report, String id) {
        return report.cost().lines().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line " + id));
    }

    private static List<String> ids(BoatReport report) {
        return report.cost().lines().stream().map(CostLine::id).toList();
    }

    private static double partsOf(BoatReport report, String label) {
        return report.fair().parts().stream()
                .filter(each -> each.label().equals(label))
                .mapToDouble(each -> each.amount())
                .sum();
    }

    /** A quote is money of the shortlist already: 2000 crowns stay 2000 crowns at 10 crowns for a dollar. */
    @Test
    void takesAQuoteInTheShortlistsCurrency() {
        BoatReport report = report(
                Map.of("priceFactor", 10.0), boat(5000).withFinding(quoted("hull-crack", Outcome.MAJOR, 2000)));
        assertThat(line(report, "repair-hull-crack").presentValue()).isCloseTo(2000, within(1e-9));
        // 60 % of the repair come off the fair price: retention-modifiers.csv, "bargain repairs"
        assertThat(partsOf(report, "share of likely repairs that comes off a fair price"))
                .isCloseTo(-1200, within(1e-9));
    }

    /** boat-defaults.csv: a sit-on-top of polyethylene is 950 USD new, so 9500 crowns at 10 for a dollar. */
    @Test
    void assumesThePriceNewInTheShortlistsCurrency() {
        assertThat(report(Map.of("priceFactor", 10.0), boat(5000))
                        .boat()
                        .priceNew()
                        .value())
                .isCloseTo(9500, within(1e-9));
    }

    /** Ten times the money in, ten times the cost out: nothing in a boat's cost stays behind in dollars. */
    @Test
    void costsTenTimesAsMuchInACurrencyOfATenthTheWorth() {
        BoatReport dollars = report(Map.of(), boat(500).withFinding(quoted("hull-crack", Outcome.MAJOR, 200)));
        BoatReport crowns = report(
                Map.of("priceFactor", 10.0), boat(5000).withFinding(quoted("hull-crack", Outcome.MAJOR, 2000)));
        assertThat(crowns.cost().presentValue())
                .isCloseTo(10 * dollars.cost().presentValue(), within(1e-6));
        assertThat(crowns.fair().amount()).isCloseTo(10 * dollars.fair().amount(), within(1e-6));
        assertThat(crowns.futures().p90())
                .isCloseTo(10 * dollars.futures().p90(), within(0.01 * dollars.futures().p90()));
    }

    /** 25 % of 800 at a shop are 200, exactly, for a typed rate has no spread. */
    @Test
    void chargesTheSalesTaxThatWasTyped() {
        CandidateData boat = boat(BoatKind.SIT_ON_TOP, 800, SellerKind.SHOP, Map.of());
        CostLine tax = line(report(Map.of("salesTax", 0.25), boat), "sales-tax");
        assertThat(tax.presentValue()).isCloseTo(200, within(1e-9));
        assertThat(tax.mostPresentValue()).isCloseTo(200, within(1e-9));
        assertThat(ids(report(Map.of("salesTax", 0.25), boat(800)))).doesNotContain("sales-tax");
    }

    /** Without a typed rate the book's 0, 6 and 10 % stand: at most 80 on 800. */
    @Test
    void keepsTheRangeOfTheSalesTaxWhereNobodyTypedARate() {
        CostLine tax = line(report(Map.of(), boat(BoatKind.SIT_ON_TOP, 800, SellerKind.SHOP, Map.of())), "sales-tax");
        assertThat(tax.leastPresentValue()).isCloseTo(0, within(1e-9));
        assertThat(tax.mostPresentValue()).isCloseTo(80, within(1e-9));
    }

    /** What has to be bought anyway is no repair on top: one life jacket, one paddle, one cart. */
    @Test
    void buysGearThatIsNotFitForUseOnlyOnce() {
        BoatReport plain = report(Map.of(), boat(500));
        BoatReport found = report(
                Map.of(),
                boat(500)
                        .withFinding(Finding.of("pfd", Outcome.MAJOR))
                        .withFinding(Finding.of("paddle", Outcome.MAJOR))
                        .withFinding(Finding.of("cart-check", Outcome.MAJOR)));
        assertThat(ids(found)).contains("vest", "paddle").noneMatch(each -> each.startsWith("repair-") && !each.equals("repair-hidden"));
        assertThat(found.fair().amount()).isCloseTo(plain.fair().amount(), within(1e-9));
    }

    /** A life jacket that comes along but is no good leaves one to buy. */
    @Test
    void buysAnewWhatComesWithTheBoatButIsUnfit() {
        CandidateData boat = boat(BoatKind.SIT_ON_TOP, 500, SellerKind.PRIVATE, Map.of("vest", 1, "paddle", 1));
        assertThat(ids(report(Map.of(), boat))).doesNotContain("vest", "paddle");
        assertThat(ids(report(
                        Map.of(),
                        boat.withFinding(Finding.of("pfd", Outcome.MAJOR))
                                .withFinding(Finding.of("paddle", Outcome.MAJOR)))))
                .contains("vest", "paddle");
    }

    @Test
    void doesNotBuyWhatComesWithTheBoat() {
        Map<String, Object> coast = Map.of("hardestWater", Waters.SHELTERED_COAST);
        assertThat(ids(report(coast, boat(500)))).contains("rescue-kit");
        assertThat(ids(report(coast, boat(BoatKind.SIT_ON_TOP, 500, SellerKind.PRIVATE, Map.of("rescue-kit", 1)))))
                .doesNotContain("rescue-kit");
    }

    /** Who pays a repairer's quote has a sound boat: it resells, and is priced, as one without the fault. */
    @Test
    void resellsAMendedBoatAsASoundOne() {
        BoatReport sound = report(Map.of(), boat(500));
        BoatReport mended = report(Map.of(), boat(500).withFinding(quoted("hull-crack", Outcome.MAJOR, 200)));
        assertThat(mended.cost().resale()).isCloseTo(sound.cost().resale(), within(1e-9));
        // less 60 % of 200 for the bargain, and nothing else
        assertThat(mended.fair().amount()).isCloseTo(sound.fair().amount() - 120, within(1e-9));
    }

    /** A paddle is 110 USD new; a buyer without one gains 35 % of that, 38.50, in the fair price. */
    @Test
    void countsUsefulGearInTheFairPrice() {
        BoatReport plain = report(Map.of(), boat(500));
        BoatReport paddle =
                report(Map.of(), boat(BoatKind.SIT_ON_TOP, 500, SellerKind.PRIVATE, Map.of("paddle", 1)));
        assertThat(paddle.fair().amount() - plain.fair().amount()).isCloseTo(38.5, within(1e-9));
    }

    /** A second paddle is of no use to one person: 15 % of 110 more. */
    @Test
    void countsSpareGearForLess() {
        BoatReport two = report(Map.of(), boat(BoatKind.SIT_ON_TOP, 500, SellerKind.PRIVATE, Map.of("paddle", 2)));
        BoatReport one = report(Map.of(), boat(BoatKind.SIT_ON_TOP, 500, SellerKind.PRIVATE, Map.of("paddle", 1)));
        assertThat(two.fair().amount() - one.fair().amount()).isCloseTo(16.5, within(1e-9));
    }
}
