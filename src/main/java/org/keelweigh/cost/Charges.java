package org.keelweigh.cost;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.keelweigh.quantity.Estimate;

/** Lays out every cost of one boat over the years, each money once. */
final class Charges {

    static final String PRICE_ID = "purchase";

    private static final PriceItem PRICE = new PriceItem(
            PRICE_ID,
            "price",
            CostGroup.PURCHASE,
            PriceRule.ONCE,
            0,
            0,
            0,
            0,
            Estimate.exactly(100),
            PriceItem.Unit.PERCENT_OF_PRICE,
            Need.ALWAYS,
            false,
            "what is paid for the boat");

    private final OwnershipFacts facts;
    private final Depreciation depreciation;

    private Charges(OwnershipFacts facts, Depreciation depreciation) {
        this.facts = facts;
        this.depreciation = depreciation;
    }

    static List<Charge> of(OwnershipFacts facts, PriceBook book, Depreciation depreciation) {
        facts.overrides().keySet().forEach(id -> requireKnown(id, book));
        Charges maker = new Charges(facts, depreciation);
        List<Charge> charges = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        charges.add(maker.charge(PRICE.withEach(PRICE.each(), facts.priceWhy()), 1));
        ids.add(PRICE.id());
        for (PriceItem each : book.items()) {
            double count = facts.count(each.when());
            if (count > 0) {
                charges.add(maker.charge(each, count));
                ids.add(each.id());
            }
        }
        for (PriceItem each : facts.typed()) {
            if (!ids.add(each.id())) {
                throw new IllegalArgumentException(
                        "The cost " + each.id() + " is typed, but the price book counts it already");
            }
            charges.add(maker.charge(each, 1));
        }
        charges.removeIf(each -> each.presentFactor(new DiscountRate(0)) == 0);
        return charges;
    }

    private static void requireKnown(String id, PriceBook book) {
        if (book.item(id).isEmpty()) {
            throw new IllegalArgumentException(
                    "An amount is typed for " + id + ", but the price book has no such item");
        }
    }

    private Charge charge(PriceItem item, double count) {
        Estimate override = facts.overrides().get(item.id());
        PriceItem used = override == null ? item : item.withEach(override, "typed amount in place of the price book's");
        boolean typedResale = override != null && item.unit() == PriceItem.Unit.TIMES_CURVE;
        boolean money = typedResale || item.unit() == PriceItem.Unit.MONEY;
        boolean ofPrice = !money && item.unit() == PriceItem.Unit.PERCENT_OF_PRICE;
        Estimate each = money ? used.each() : used.each().times(scale(item));
        Charge.Driver driver =
                switch (item.rule()) {
                    case OUTING, KM_OUTING -> Charge.Driver.OUTINGS;
                    case EVERY_USE_DAYS -> Charge.Driver.USE_DAYS;
                    case ONCE, YEAR, KM_ONCE, EVERY_YEARS, PASS, END -> Charge.Driver.FIXED;
                };
        return new Charge(used, each, ofPrice, driver, interval(item), byYear(item, count));
    }

    private double scale(PriceItem item) {
        return switch (item.unit()) {
            case MONEY -> 1;
            case PERCENT_OF_PRICE -> 0.01;
            case PERCENT_OF_NEW -> 0.01 * facts.priceNew();
            case TIMES_CURVE ->
                depreciation.resale(
                        facts.kind(),
                        facts.material(),
                        facts.drive(),
                        facts.priceNew(),
                        facts.ageYears() + facts.horizonYears(),
                        facts.conditionAtEnd(),
                        facts.discontinuedDrive());
        };
    }

    private double interval(PriceItem item) {
        return facts.hardWater() ? item.everyLeast() : item.everyMost();
    }

    private double[] byYear(PriceItem item, double count) {
        int horizon = facts.horizonYears();
        double[] byYear = new double[horizon + 1];
        switch (item.rule()) {
            case ONCE -> byYear[0] = count;
            case KM_ONCE -> byYear[0] = count * 2 * facts.fetchKm();
            case END -> byYear[horizon] = item.unit() == PriceItem.Unit.TIMES_CURVE ? -count : count;
            case YEAR, OUTING, EVERY_USE_DAYS, PASS -> fillYears(byYear, count);
            case KM_OUTING -> fillYears(byYear, count * 2 * facts.waterKm());
            case EVERY_YEARS -> {
                double every = (item.everyLeast() + item.everyMost()) / 2;
                for (double year = firstYear(item); year < horizon; year += every) {
                    byYear[(int) Math.round(year)] += count;
                }
            }
        }
        return byYear;
    }

    /** A battery is as old as the boat; one past its life lasts until the end of the first year. */
    private double firstYear(PriceItem item) {
        return item.when().isBattery() ? Math.max(1, item.firstYear() - facts.ageYears()) : item.firstYear();
    }

    private static void fillYears(double[] byYear, double amount) {
        for (int year = 1; year < byYear.length; year++) {
            byYear[year] = amount;
        }
    }

    static String timing(Charge charge) {
        PriceItem item = charge.item();
        return switch (item.rule()) {
            case ONCE -> "once, before the first launch";
            case KM_ONCE -> "once, there and back";
            case YEAR -> "every year";
            case PASS -> "every year, in place of day fees";
            case OUTING -> "every outing";
            case KM_OUTING -> "every outing, there and back";
            case EVERY_YEARS ->
                String.format(Locale.ROOT, "every %.0f years", (item.everyLeast() + item.everyMost()) / 2);
            case EVERY_USE_DAYS ->
                String.format(Locale.ROOT, "every %.0f days of use", charge.intervalDays())
                        + (item.minPerYear() > 0
                                ? String.format(Locale.ROOT, ", at least %.0f a year", item.minPerYear())
                                : "");
            case END -> "when it is sold";
        };
    }
}
