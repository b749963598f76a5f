package org.keelweigh.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.Coded;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.quantity.Estimate;

class OwnershipTests {

    static final PriceBook BOOK = PriceBook.read(Catalogue.shipped());
    static final PriceBook LIKELY = new PriceBook(BOOK.items().stream()
            .map(each -> each.withEach(Estimate.exactly(each.each().likely()), each.why()))
            .toList());
    static final Depreciation DEPRECIATION = Depreciation.read(Catalogue.shipped());

    /**
     * Constructed: buy 900, 85 a year, 90 after three years, sell for 400 after five, 25 days a year, 3 % real. The
     * factors are those of NIST Handbook 135; the sums were recomputed apart from this program.
     */
    @Test
    void addsUpTheWorkedBoat() {
        FiveYearCost cost = worked(0.03);
        assertThat(cost.presentValue()).isCloseTo(1026.594346, within(1e-5));
        assertThat(cost.equivalentYearly()).isCloseTo(224.161569, within(1e-5));
        assertThat(cost.perOuting().orElseThrow()).isCloseTo(8.966463, within(1e-5));
        assertThat(cost.equivalentYearly() / 40)
                .as("days a year at which renting for 40 costs the same")
                .isCloseTo(5.604039, within(1e-5));
        assertThat(worked(0).presentValue()).isCloseTo(1015, within(1e-9));
        assertThat(worked(0).equivalentYearly()).isCloseTo(203, within(1e-9));
    }

    /** The same boat with running costs that rise by 2 % a year, and with running costs and part paid in mid-year. */
    @Test
    void agreesWithTheVariantsOfTheWorkedBoat() {
        DiscountRate three = new DiscountRate(0.03);
        double rest = worked(0.03).presentValue() - 85 * three.uniformPresentValue(5);
        assertThat(rest + 85 * three.escalatingPresentValue(0.02, 5)).isCloseTo(1050.099674, within(1e-5));
        List<CashFlow> midYear = new ArrayList<>(IntStream.rangeClosed(1, 5)
                .mapToObj(year -> new CashFlow(year - 0.5, 85))
                .toList());
        midYear.add(new CashFlow(2.5, 90));
        midYear.add(new CashFlow(3, -90));
        assertThat(rest + PresentValue.of(midYear, three)).isCloseTo(1033.616636, within(1e-5));
    }

    /**
     * Six invented boats worked by hand at no discount, in whole USD: common practice, no source. They were worked with likely
     * amounts only, so the book is taken without its spread.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/oracle/ownership.csv", useHeadersInDisplayName = true)
    void reproducesTheSixExampleBoats(
            String id,
            String kind,
            String material,
            String drive,
            double priceNew,
            double age,
            double paid,
            double taxPercent,
            double fetchKm,
            double outings,
            String needs,
            double repairs,
            double gear,
            double fetch,
            double dayOne,
            double upkeep,
            double launch,
            double resaleNet,
            double total,
            double perOuting) {
        Map<String, Estimate> typed = taxPercent > 0 ? Map.of("sales-tax", Estimate.exactly(taxPercent)) : Map.of();
        FiveYearCost cost = Ownership.cost(
                OwnershipFacts.of(
                                Coded.parse(BoatKind.class, kind),
                                Coded.parse(HullMaterial.class, material),
                                Coded.parse(DriveKind.class, drive),
                                paid,
                                priceNew,
                                age)
                        .withUse(outings, fetchKm, 0, false)
                        .withNeeds(needs(needs))
                        .withTyped(List.of(repairs(repairs)), typed)
                        .over(5, new DiscountRate(0)),
                LIKELY,
                DEPRECIATION);
        double launchLine = line(cost, "launch-parking").total();
        assertThat(cost.presentValue(CostGroup.READY) - repairs).isCloseTo(gear, within(0.5));
        assertThat(line(cost, "fetch-trip").total()).isCloseTo(fetch, within(0.6));
        assertThat(cost.dayOne()).isCloseTo(dayOne, within(1.0));
        assertThat(launchLine).isCloseTo(launch, within(0.5));
        assertThat(cost.presentValue(CostGroup.RUNNING) - launchLine).isCloseTo(upkeep, within(1.0));
        assertThat(-cost.presentValue(CostGroup.RESALE)).isCloseTo(resaleNet, within(1.0));
        assertThat(cost.total()).isCloseTo(total, within(2.0));
        assertThat(cost.perOuting().orElseThrow()).isCloseTo(perOuting, within(0.6));
    }

    @Property(tries = 200)
    void addsUpItsLinesAndItsYears(
            @ForAll BoatKind kind,
            @ForAll HullMaterial material,
            @ForAll DriveKind drive,
            @ForAll @DoubleRange(min = 0, max = 4000) double price,
            @ForAll @DoubleRange(min = 0, max = 40) double age,
            @ForAll @DoubleRange(min = 0, max = 120) double outings,
            @ForAll @IntRange(min = 1, max = 30) int years,
            @ForAll @DoubleRange(min = 0, max = 0.1) double rate) {
        FiveYearCost cost = Ownership.cost(
                OwnershipFacts.of(kind, material, drive, price, 2000, age)
                        .withNeeds(everyNeed())
                        .withUse(outings, 30, 12, true)
                        .over(years, new DiscountRate(rate)),
                BOOK,
                DEPRECIATION);
        double groups = 0;
        for (CostGroup each : CostGroup.values()) {
            groups += cost.presentValue(each);
        }
        List<CashFlow> yearly = new ArrayList<>();
        for (int year = 0; year <= years; year++) {
            yearly.add(new CashFlow(year, cost.intoYear(year)));
        }
        assertThat(groups).isCloseTo(cost.presentValue(), within(1e-6));
        assertThat(PresentValue.of(yearly, new DiscountRate(rate))).isCloseTo(cost.presentValue(), within(1e-6));
        assertThat(cost.resale()).isNotNegative();
        assertThat(cost.presentValue()).isBetween(cost.leastPresentValue(), cost.mostPresentValue());
        assertThat(cost.likelyPresentValue()).isBetween(cost.leastPresentValue(), cost.mostPresentValue());
        assertThat(cost.lines()).extracting(CostLine::id).doesNotHaveDuplicates();
        assertThat(cost.lines()).allSatisfy(line -> assertThat(line.why()).isNotBlank());
    }

    @Property(tries = 200)
    void costsMoreForAHigherPriceByOnePlusTheTax(
            @ForAll @DoubleRange(min = 0, max = 4000) double price,
            @ForAll @DoubleRange(min = 1, max = 1000) double more) {
        OwnershipFacts facts = facts().withNeeds(Map.of(Need.TAXED, 1));
        PriceResponse response = PriceResponse.of(facts.withPrice(price), BOOK, DEPRECIATION);
        double dearer = Ownership.cost(facts.withPrice(price + more), BOOK, DEPRECIATION)
                .presentValue();
        double taxShare = new Estimate(0, 0.06, 0.10).mean();
        assertThat(response.slope()).isCloseTo(1 + taxShare, within(1e-12));
        assertThat(dearer - response.cost()).isCloseTo(more * (1 + taxShare), within(1e-6));
        assertThat(response.costAt(price + more)).isCloseTo(dearer, within(1e-6));
        assertThat(response.priceFor(dearer)).isCloseTo(price + more, within(1e-6));
    }

    @Property(tries = 300)
    void costsMoreWhenAnythingCostsMore(
            @ForAll @IntRange(min = 0, max = 100) int pick,
            @ForAll @Scale(3) @DoubleRange(min = 1.001, max = 3) double factor) {
        List<PriceItem> items = new ArrayList<>(BOOK.items());
        int index = pick % items.size();
        PriceItem item = items.get(index);
        items.set(index, item.withEach(item.each().times(factor), item.why()));
        OwnershipFacts facts = facts().withNeeds(everyNeed()).withUse(20, 40, 10, false);
        double before = Ownership.cost(facts, BOOK, DEPRECIATION).mostPresentValue();
        double after = Ownership.cost(facts, new PriceBook(items), DEPRECIATION).mostPresentValue();
        if (item.id().equals("resale")) {
            assertThat(after).isLessThan(before);
        } else {
            assertThat(after).isGreaterThanOrEqualTo(before);
        }
    }

    @Test
    void takesTheCheaperOfDayFeesAndPass() {
        OwnershipFacts often = facts().withNeeds(Map.of(Need.LAUNCH_FEES, 1)).withUse(40, 0, 0, false);
        OwnershipFacts seldom = often.withUse(10, 0, 0, false);
        assertThat(Ownership.cost(often, BOOK, DEPRECIATION).lines())
                .extracting(CostLine::id)
                .contains("annual-pass")
                .doesNotContain("launch-parking");
        assertThat(Ownership.cost(seldom, BOOK, DEPRECIATION).lines())
                .extracting(CostLine::id)
                .contains("launch-parking")
                .doesNotContain("annual-pass");
    }

    /**
     * A day at the launch is 0, 5 or 20 USD and on average (0 + 4·5 + 20)/6 = 6.67; ten a year over five years at no discount
     * are 333.33. The pass never costs less at ten days: 25 is its least, and so the day fees are dearer only above 2.50 a day.
     */
    @Test
    void expectsTheCheaperOfDayFeesAndPassEachTime() {
        OwnershipFacts seldom = facts().withNeeds(Map.of(Need.LAUNCH_FEES, 1))
                .withUse(10, 0, 0, false)
                .over(5, new DiscountRate(0));
        CostLine launching = line(Ownership.cost(seldom, BOOK, DEPRECIATION), "launch-parking");
        assertThat(launching.presentValue()).isBetween(0.8 * 333.33, 333.33);
        assertThat(launching.likelyPresentValue()).isCloseTo(250, within(1e-9));
    }

    /** Outings of 0.5, 1 or 1.3 times what was said are (0.5 + 4 + 1.3)/6 = 0.9667 of it on average. */
    @Test
    void expectsFewerOutingsWhereTheyMayFallShort() {
        OwnershipFacts facts = facts().withUse(12, 0, 10, false).over(5, new DiscountRate(0));
        double said =
                line(Ownership.cost(facts, BOOK, DEPRECIATION), "water-drive").presentValue();
        double spread = line(
                        Ownership.cost(facts.withOutingsSpread(new Estimate(0.5, 1, 1.3)), BOOK, DEPRECIATION),
                        "water-drive")
                .presentValue();
        assertThat(spread / said).isCloseTo(5.8 / 6, within(1e-3));
        // 12 outings of 20 km there and back for five years, at (0.15 + 4·0.25 + 0.45)/6 a km
        assertThat(said).isCloseTo(12 * 20 * 5 * 1.6 / 6, within(1e-9));
    }

    /** About every 75 days of normal use, 40 where salt or sand ask for caution: common practice, no source. */
    @Test
    void servicesADriveByDaysOfUse() {
        OwnershipFacts pedal =
                OwnershipFacts.of(BoatKind.PEDAL_KAYAK, HullMaterial.POLYETHYLENE, DriveKind.PROPELLER, 1000, 2650, 6);
        assertThat(services(pedal.withUse(18, 0, 0, false))).isCloseTo(5, within(1e-9));
        assertThat(services(pedal.withUse(150, 0, 0, false))).isCloseTo(10, within(1e-9));
        assertThat(services(pedal.withUse(80, 0, 0, true))).isCloseTo(10, within(1e-9));
    }

    @Test
    void renewsACoverButNotOnTheDayOfSale() {
        OwnershipFacts outside = facts().withNeeds(Map.of(Need.STORED_OUTSIDE, 1));
        assertThat(line(Ownership.cost(outside, BOOK, DEPRECIATION), "cover").flows())
                .extracting(CashFlow::year)
                .containsExactly(0.0, 3.0);
        assertThat(line(Ownership.cost(outside.over(3, DiscountRate.USUAL), BOOK, DEPRECIATION), "cover")
                        .flows())
                .hasSize(1);
    }

    @Test
    void countsInTheCurrencyAsked() {
        OwnershipFacts dollars = facts().withNeeds(everyNeed()).withUse(18, 30, 5, false);
        OwnershipFacts crowns = OwnershipFacts.of(
                        BoatKind.SIT_ON_TOP, HullMaterial.POLYETHYLENE, DriveKind.NONE, 7000, 10_000, 4)
                .withNeeds(everyNeed())
                .withUse(18, 30, 5, false);
        double inDollars = Ownership.cost(dollars, BOOK, DEPRECIATION).presentValue();
        double inCrowns = Ownership.cost(crowns, BOOK.inCurrency(10), DEPRECIATION.inCurrency(10))
                .presentValue();
        assertThat(inCrowns).isCloseTo(10 * inDollars, within(1e-6));
    }

    @Test
    void countsNoMoneyTwice() {
        PriceItem secondCart =
                PriceItem.typed("cart", "cart", CostGroup.READY, PriceRule.ONCE, 0, Estimate.exactly(90), "typed");
        OwnershipFacts facts = facts().withNeeds(Map.of(Need.CART, 1)).withTyped(List.of(secondCart), Map.of());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Ownership.cost(facts, BOOK, DEPRECIATION))
                .withMessageContaining("cart");
    }

    @Test
    void refusesImpossibleFacts() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> facts().over(0, DiscountRate.USUAL))
                .withMessageContaining("years");
        assertThatIllegalArgumentException().isThrownBy(() -> facts().withPrice(-1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Ownership.cost(
                        facts().withTyped(List.of(), Map.of("no-such", Estimate.ZERO)), BOOK, DEPRECIATION))
                .withMessageContaining("no-such");
    }

    static OwnershipFacts facts() {
        return OwnershipFacts.of(BoatKind.SIT_ON_TOP, HullMaterial.POLYETHYLENE, DriveKind.NONE, 700, 1000, 4);
    }

    static Map<Need, Integer> everyNeed() {
        Map<Need, Integer> all = new EnumMap<>(Need.class);
        for (Need each : Need.values()) {
            if (!each.code().startsWith("build-") && !each.code().startsWith("drive-")) {
                all.put(each, 1);
            }
        }
        all.put(Need.MISSING_VEST, 2);
        return all;
    }

    private static double services(OwnershipFacts facts) {
        return line(Ownership.cost(facts, BOOK, DEPRECIATION), "drive-service-prop")
                .count();
    }

    private static CostLine line(FiveYearCost cost, String id) {
        return cost.lines().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static FiveYearCost worked(double rate) {
        PriceBook onlyResale = new PriceBook(List.of(BOOK.item("resale").orElseThrow()));
        OwnershipFacts facts = OwnershipFacts.of(
                        BoatKind.SIT_ON_TOP, HullMaterial.POLYETHYLENE, DriveKind.NONE, 900, 1000, 1)
                .withUse(25, 0, 0, false)
                .withTyped(
                        List.of(
                                PriceItem.typed(
                                        "upkeep",
                                        "upkeep",
                                        CostGroup.RUNNING,
                                        PriceRule.YEAR,
                                        0,
                                        Estimate.exactly(85),
                                        "typed"),
                                PriceItem.typed(
                                        "part",
                                        "part",
                                        CostGroup.RUNNING,
                                        PriceRule.EVERY_YEARS,
                                        3,
                                        Estimate.exactly(90),
                                        "typed")),
                        Map.of("resale", Estimate.exactly(400)))
                .over(5, new DiscountRate(rate));
        return Ownership.cost(facts, onlyResale, DEPRECIATION);
    }

    private static PriceItem repairs(double likely) {
        return PriceItem.typed(
                "repairs", "repairs", CostGroup.READY, PriceRule.ONCE, 0, Estimate.exactly(likely), "findings");
    }

    private static Map<Need, Integer> needs(String words) {
        Map<Need, Integer> needs = new EnumMap<>(Need.class);
        for (String word : words.split(" ")) {
            needs.merge(Coded.parse(Need.class, word), 1, Integer::sum);
        }
        return needs;
    }
}
