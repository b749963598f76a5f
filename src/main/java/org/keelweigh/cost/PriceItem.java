package org.keelweigh.cost;

import org.keelweigh.boat.Coded;
import org.keelweigh.catalogue.Row;
import org.keelweigh.quantity.Estimate;

/**
 * One item of the price book, or one a person typed.
 *
 * @param id short name, unique in the book
 * @param label what it is, as a phrase
 * @param group the heap it falls into
 * @param rule when it is paid
 * @param everyLeast shortest interval: years for {@link PriceRule#EVERY_YEARS}, days of use for
 *     {@link PriceRule#EVERY_USE_DAYS}, else 0
 * @param everyMost longest interval
 * @param minPerYear for {@link PriceRule#EVERY_USE_DAYS}, how often a year at least; 0 where only use counts
 * @param firstYear for {@link PriceRule#EVERY_YEARS}, the year of the first payment
 * @param each what one costs, in {@code unit}
 * @param unit what {@code each} counts
 * @param when what makes it fall due
 * @param shared whether all boats share its uncertainty, as they share the fee of a launch
 * @param why where the figure comes from and what to know about it, as a phrase that can be shown
 */
public record PriceItem(
        String id,
        String label,
        CostGroup group,
        PriceRule rule,
        double everyLeast,
        double everyMost,
        double minPerYear,
        double firstYear,
        Estimate each,
        Unit unit,
        Need when,
        boolean shared,
        String why) {

    /** What the figures of an item count. */
    public enum Unit implements Coded {
        MONEY("money"),
        PERCENT_OF_PRICE("percent-of-price"),
        PERCENT_OF_NEW("percent-of-new"),
        TIMES_CURVE("times-curve");

        private final String code;

        Unit(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    public PriceItem {
        Amounts.requireNotNegative("low price of " + id, each.low());
        Amounts.requireNotNegative("least times a year of " + id, minPerYear);
        Amounts.requireNotNegative("first year of " + id, firstYear);
        boolean repeats = rule == PriceRule.EVERY_YEARS || rule == PriceRule.EVERY_USE_DAYS;
        if (repeats && !(everyLeast > 0 && everyMost >= everyLeast)) {
            throw new IllegalArgumentException("The item " + id + " needs an interval above 0, with the least not above"
                    + " the most, not " + everyLeast + " to " + everyMost);
        }
        if (unit == Unit.PERCENT_OF_PRICE && rule != PriceRule.ONCE) {
            throw new IllegalArgumentException("A percentage of the price is paid once, but " + id + " is not");
        }
    }

    /**
     * Makes an item from a typed amount.
     *
     * @param id short name, unlike any other line's
     * @param label what it is, as a phrase
     * @param group the heap it falls into
     * @param rule any rule but {@link PriceRule#EVERY_USE_DAYS} and {@link PriceRule#PASS}
     * @param everyYears interval for {@link PriceRule#EVERY_YEARS}, first paid after it; else 0
     * @param each the amount
     * @param why where it comes from, as a phrase that can be shown
     */
    public static PriceItem typed(
            String id, String label, CostGroup group, PriceRule rule, double everyYears, Estimate each, String why) {
        if (rule == PriceRule.EVERY_USE_DAYS || rule == PriceRule.PASS) {
            throw new IllegalArgumentException("A typed cost cannot follow the rule " + rule.code());
        }
        return new PriceItem(
                id,
                label,
                group,
                rule,
                everyYears,
                everyYears,
                0,
                everyYears,
                each,
                Unit.MONEY,
                Need.ALWAYS,
                false,
                why);
    }

    static PriceItem read(Row row) {
        Estimate each =
                new Estimate(row.number("low", 0, 1e6), row.number("likely", 0, 1e6), row.number("high", 0, 1e6));
        String source = row.text("source");
        String note = row.optional("note").map(text -> text + "; ").orElse("");
        return new PriceItem(
                row.text("id"),
                row.text("name"),
                Coded.parse(CostGroup.class, row.text("group")),
                Coded.parse(PriceRule.class, row.text("rule")),
                row.optionalNumber("every_least", 0, 1e4).orElse(0.0),
                row.optionalNumber("every_most", 0, 1e4).orElse(0.0),
                row.optionalNumber("min_per_year", 0, 365).orElse(0.0),
                row.optionalNumber("first", 0, 100).orElse(0.0),
                each,
                Coded.parse(Unit.class, row.text("unit")),
                Coded.parse(Need.class, row.text("when")),
                yes(row),
                note + "price book \"" + row.text("id") + "\" (" + source + ")");
    }

    PriceItem withEach(Estimate other, String otherWhy) {
        return new PriceItem(
                id,
                label,
                group,
                rule,
                everyLeast,
                everyMost,
                minPerYear,
                firstYear,
                other,
                unit,
                when,
                shared,
                otherWhy);
    }

    private static boolean yes(Row row) {
        return switch (row.text("shared")) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw row.complaint("the column shared holds \"" + row.text("shared") + "\", not yes or no");
        };
    }
}
