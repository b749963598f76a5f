package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.ListingFacts;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.SellerKind;
import org.keelweigh.cost.CostLine;
import org.keelweigh.fit.Waters;
import org.keelweigh.haul.CartPlan;
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
        BoatReport report =
                report(Map.of("priceFactor", 10.0), boat(5000).withFinding(quoted("hull-crack", Outcome.MAJOR, 2000)));
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
        BoatReport crowns =
                report(Map.of("priceFactor", 10.0), boat(5000).withFinding(quoted("hull-crack", Outcome.MAJOR, 2000)));
        assertThat(crowns.cost().presentValue()).isCloseTo(10 * dollars.cost().presentValue(), within(1e-6));
        assertThat(crowns.fair().amount()).isCloseTo(10 * dollars.fair().amount(), within(1e-6));
        assertThat(crowns.futures().p90())
                .isCloseTo(
                        10 * dollars.futures().p90(),
                        within(0.01 * dollars.futures().p90()));
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
        assertThat(ids(found))
                .contains("vest", "paddle")
                .noneMatch(each -> each.startsWith("repair-") && !each.equals("repair-hidden"));
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
        BoatReport paddle = report(Map.of(), boat(BoatKind.SIT_ON_TOP, 500, SellerKind.PRIVATE, Map.of("paddle", 1)));
        assertThat(paddle.fair().amount() - plain.fair().amount()).isCloseTo(38.5, within(1e-9));
    }

    /** A second paddle is of no use to one person: 15 % of 110 more. */
    @Test
    void countsSpareGearForLess() {
        BoatReport two = report(Map.of(), boat(BoatKind.SIT_ON_TOP, 500, SellerKind.PRIVATE, Map.of("paddle", 2)));
        BoatReport one = report(Map.of(), boat(BoatKind.SIT_ON_TOP, 500, SellerKind.PRIVATE, Map.of("paddle", 1)));
        assertThat(two.fair().amount() - one.fair().amount()).isCloseTo(16.5, within(1e-9));
    }

    /** retention-modifiers.csv lets extras add a quarter of the hull's value at most; here 35 % of 900 for a trailer is more. */
    @Test
    void letsGearAddAQuarterOfTheHullAtMost() {
        BoatReport plain = report(Map.of(), boat(500));
        BoatReport trailer = report(Map.of(), boat(BoatKind.SIT_ON_TOP, 500, SellerKind.PRIVATE, Map.of("trailer", 5)));
        assertThat(trailer.fair().amount()).isCloseTo(1.25 * plain.fair().amount(), within(1e-9));
    }

    /** carts.csv: the one cart in the answer is the one that is paid, at (low + 4 likely + high)/6. */
    @Test
    void paysForTheCartThatTheHaulWasWorkedOutWith() {
        BoatReport report = report(Map.of(), boat(BoatKind.CANOE, 800, SellerKind.PRIVATE, Map.of()));
        CartPlan plan = (CartPlan) report.cart();
        CostLine cart = line(report, "cart");
        assertThat(cart.label()).isEqualTo("launch cart: " + plan.cart().label());
        assertThat(plan.neededRatingKg()).isLessThan(plan.cart().ratedKg().likely());
        assertThat(cart.presentValue()).isCloseTo(plan.cart().price().mean(), within(1e-9));
        assertThat(ids(report(Map.of(), boat(BoatKind.CANOE, 800, SellerKind.PRIVATE, Map.of("cart", 1)))))
                .doesNotContain("cart");
    }

    /**
     * A lithium battery lasts 10 years and costs (220 + 4·420 + 900)/6 = 466.67 on average. At 14 years of age it is due at the end of
     * the first year, 466.67/1.02; at 7 in the third; at 2 not within five years.
     */
    @Test
    void replacesABatteryAsOldAsTheBoat() {
        assertThat(line(report(Map.of(), motor(2012)), "battery-lithium").presentValue())
                .isCloseTo(466.6667 / 1.02, within(1e-3));
        assertThat(line(report(Map.of(), motor(2019)), "battery-lithium").presentValue())
                .isCloseTo(466.6667 / Math.pow(1.02, 3), within(1e-3));
        assertThat(ids(report(Map.of(), motor(2024)))).doesNotContain("battery-lithium");
        assertThat(report(Map.of(), motor(2024)).assumptions())
                .anyMatch(each -> each.sentence().contains("lithium battery"));
    }

    /** A battery that has to be replaced now is paid among the repairs. */
    @Test
    void replacesABatteryOnce() {
        BoatReport report = report(Map.of(), motor(2012).withFinding(Finding.of("battery-capacity", Outcome.STOP)));
        assertThat(ids(report)).contains("repair-battery-capacity").doesNotContain("battery-lithium");
    }

    private static CandidateData motor(int year) {
        CandidateData boat = boat(BoatKind.PEDAL_KAYAK, 2000, SellerKind.PRIVATE, Map.of());
        boat = new FieldPath("boat.drive").with(boat, DriveKind.MOTOR);
        return new FieldPath("boat.modelYear").with(boat, year);
    }

    @Test
    void saysWhereThePriceComesFrom() {
        CandidateData unpriced = CandidateData.of("One", BoatKind.CANOE);
        assertThat(line(report(Map.of(), unpriced), "purchase").why()).contains("no asking price yet");
        assertThat(line(report(Map.of(), boat(500)), "purchase").why()).isEqualTo("the asking price");
    }

    @Test
    void saysWhatItAssumesAboutTheTrip() {
        Measured measured = Samples.measured(List.of(), boat(500));
        assertThat(measured.situation().assumptions())
                .anyMatch(each -> each.field().equals("trip.car.hasBars"));
        assertThat(measured.boats().getFirst().assumptions())
                .anyMatch(each -> each.field().equals("listing.distanceM"));
        assertThat(AssumedFigures.of(measured)).extracting(AssumedFigure::field).contains("listing.distanceM");
    }

    /** 33 CFR 175.15: one throwable from 16 ft (4.877 m) on, not on canoes and kayaks. */
    @Test
    void buysAThrowableLifeJacketForALongRowingBoat() {
        CandidateData row = boat(BoatKind.ROWING_BOAT, 900, SellerKind.PRIVATE, Map.of());
        assertThat(ids(report(Map.of(), new FieldPath("boat.lengthM").with(row, 4.9))))
                .contains("throwable");
        assertThat(ids(report(Map.of(), new FieldPath("boat.lengthM").with(row, 4.8))))
                .doesNotContain("throwable");
        CandidateData canoe = boat(BoatKind.CANOE, 900, SellerKind.PRIVATE, Map.of());
        assertThat(ids(report(Map.of(), new FieldPath("boat.lengthM").with(canoe, 5.2))))
                .doesNotContain("throwable");
    }

    /** Given away, an old boat is no bait: the price says nothing about its seller. */
    @Test
    void takesAGiftForNoSignOfFraud() {
        CandidateData gift = new FieldPath("boat.modelYear").with(boat(0), 2012);
        CandidateData cheap = new FieldPath("boat.modelYear").with(boat(10), 2012);
        assertThat(report(Map.of(), gift).trust().listing().reasons()).isEmpty();
        assertThat(report(Map.of(), cheap).trust().listing().reasons()).isNotEmpty();
        assertThat(report(Map.of(), boat(10)).trust().listing().reasons())
                .as("the year and the price new are guesses")
                .isEmpty();
    }

    @Test
    void agesABoatNoFurtherThanTwentyFiveYears() {
        BoatReport old = report(Map.of(), new FieldPath("boat.modelYear").with(boat(100), 1999));
        BoatReport older = report(Map.of(), new FieldPath("boat.modelYear").with(boat(100), 1961));
        assertThat(older.unseenRepairs()).isCloseTo(old.unseenRepairs(), within(0.05 * old.unseenRepairs()));
    }
}
