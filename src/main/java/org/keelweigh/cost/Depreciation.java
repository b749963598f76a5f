package org.keelweigh.cost;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.catalogue.Row;
import org.keelweigh.catalogue.Table;

/** How used boats lose value: price curves by kind, material and drive, and what else moves a price. */
public final class Depreciation {

    private final List<Choice> choices;
    private final Map<String, Modifier> modifiers;
    private final double currencyFactor;

    private Depreciation(List<Choice> choices, Map<String, Modifier> modifiers, double currencyFactor) {
        this.choices = choices;
        this.modifiers = modifiers;
        this.currencyFactor = currencyFactor;
    }

    private record Modifier(double factor, String label) {}

    private record Choice(String kind, String material, String drive, RetentionCurve curve) {

        boolean fits(BoatKind aKind, HullMaterial aMaterial, DriveKind aDrive) {
            return fits(kind, aKind.code()) && fits(material, aMaterial.code()) && fits(drive, aDrive.code());
        }

        private static boolean fits(String pattern, String code) {
            return pattern.equals("*") || pattern.equals(code);
        }
    }

    /**
     * Reads {@code retention.csv}, {@code retention-choice.csv} and {@code retention-modifiers.csv}.
     *
     * @param catalogue where the tables are
     * @throws org.keelweigh.catalogue.CatalogueException naming file and line of what is wrong
     */
    public static Depreciation read(Catalogue catalogue) {
        Map<String, RetentionCurve> curves = new HashMap<>();
        for (RetentionCurve each :
                catalogue.table("retention.csv").unique("curve").map(RetentionCurve::read)) {
            curves.put(each.name(), each);
        }
        Table choiceTable = catalogue.table("retention-choice.csv");
        List<Choice> choices = choiceTable.map(row -> choice(row, curves));
        Row last = choiceTable.rows().getLast();
        if (!List.of("*", "*", "*").equals(List.of(last.text("kind"), last.text("material"), last.text("drive")))) {
            throw last.complaint("the last line must fit every boat: *,*,*");
        }
        Map<String, Modifier> modifiers = new HashMap<>();
        for (Row row : catalogue.table("retention-modifiers.csv").rows()) {
            row.text("source");
            modifiers.put(
                    row.text("group") + " " + row.text("code"),
                    new Modifier(row.number("factor", 0, 2), row.text("label")));
        }
        Depreciation made = new Depreciation(choices, Map.copyOf(modifiers), 1);
        made.requireComplete();
        return made;
    }

    /**
     * Makes the same tables with floor prices in another currency.
     *
     * @param factor units of that currency for one USD of 2025; above 0
     */
    public Depreciation inCurrency(double factor) {
        Amounts.requirePositive("currency factor", factor);
        return new Depreciation(choices, modifiers, factor);
    }

    /** Finds the curve that a boat follows. */
    public RetentionCurve curve(BoatKind kind, HullMaterial material, DriveKind drive) {
        return choices.stream()
                .filter(each -> each.fits(kind, material, drive))
                .findFirst()
                .orElseThrow()
                .curve();
    }

    /** Tells the factor of a state: 1 for good. */
    public double factor(ConditionClass condition) {
        return modifier("class " + condition.code()).factor();
    }

    /**
     * Tells the factor of the month of sale in the northern hemisphere.
     *
     * @param month 1..12
     */
    public double seasonFactor(int month) {
        return modifier("month " + month).factor();
    }

    /**
     * Works out the fair price: {@code max(floor·class, new·share(age)·class·month·story) + extras − 0.6·repairs}, never
     * below 0. Extras add 35 % of their new price when useful to this buyer and 15 % otherwise, at most 25 % of the
     * hull's value. Source: common practice in the trade, estimates; the factors are catalogue data.
     */
    public FairPrice fairPrice(PricedBoat boat) {
        RetentionCurve curve = curve(boat.kind(), boat.material(), boat.drive());
        List<FairPrice.Part> parts = new ArrayList<>();
        double share = curve.shareAt(boat.ageYears());
        double value = boat.priceNew();
        parts.add(new FairPrice.Part("price new today", value));
        value = step(parts, age(boat.ageYears()), value, value * share);
        for (Modifier each : modifiersOf(boat)) {
            value = step(parts, each.label(), value, value * each.factor());
        }
        double floor = curve.floor() * currencyFactor * factor(boat.condition());
        if (value < floor) {
            value = step(parts, "a whole boat of this kind fetches at least this", value, floor);
        }
        double hull = value;
        value = step(parts, "what comes with it", value, value + extras(boat, hull));
        double sound = value;
        double repairs = Math.min(value, modifier("bargain repairs").factor() * boat.likelyRepairs());
        value = step(parts, modifier("bargain repairs").label(), value, value - repairs);
        double spread = curve.sigma() * hull;
        return new FairPrice(value, Math.max(0, value - spread), value + spread, sound, parts);
    }

    /**
     * Tells what the boat likely fetches when it is sold again: {@code max(floor·class, new·share(age)·class·0.95)·0.92},
     * for a little more fading and because buyers pay less than is asked.
     *
     * @param kind what kind of boat
     * @param material what the hull is made of
     * @param drive what moves it beside a paddle or oars
     * @param priceNew today's price new; above 0
     * @param ageAtSale age when sold, years; at least 0
     * @param condition state when sold
     * @param discontinuedDrive whether the drive is no longer made
     */
    public double resale(
            BoatKind kind,
            HullMaterial material,
            DriveKind drive,
            double priceNew,
            double ageAtSale,
            ConditionClass condition,
            boolean discontinuedDrive) {
        Amounts.requirePositive("price new", priceNew);
        RetentionCurve curve = curve(kind, material, drive);
        double story = discontinuedDrive ? modifier("story discontinued-drive").factor() : 1;
        double fading = modifier("sale fading").factor();
        double market = priceNew * curve.shareAt(ageAtSale) * story * fading;
        double asked = Math.max(curve.floor() * currencyFactor, market) * factor(condition);
        return asked * modifier("sale paid-share").factor();
    }

    private List<Modifier> modifiersOf(PricedBoat boat) {
        List<Modifier> found = new ArrayList<>();
        found.add(modifier("class " + boat.condition().code()));
        if (boat.month() != null) {
            found.add(modifier("month " + boat.month()));
        }
        if (boat.discontinuedDrive()) {
            found.add(modifier("story discontinued-drive"));
        }
        if (boat.receipts()) {
            found.add(modifier("story receipts"));
        }
        if (boat.farFromWater()) {
            found.add(modifier("story far-from-water"));
        }
        return found;
    }

    private double extras(PricedBoat boat, double hull) {
        double sum = 0;
        for (PricedBoat.Extra each : boat.extras()) {
            sum += each.priceNew()
                    * modifier(each.useful() ? "extras useful" : "extras other").factor();
        }
        return Math.min(sum, modifier("extras cap").factor() * hull);
    }

    private static double step(List<FairPrice.Part> parts, String label, double before, double after) {
        if (after != before) {
            parts.add(new FairPrice.Part(label, after - before));
        }
        return after;
    }

    private static String age(double years) {
        return String.format(Locale.ROOT, "age of %.0f years", years);
    }

    private Modifier modifier(String key) {
        Modifier found = modifiers.get(key);
        if (found == null) {
            throw new IllegalArgumentException(
                    "retention-modifiers.csv has no line for " + key + ", which the price needs");
        }
        return found;
    }

    private void requireComplete() {
        for (ConditionClass each : ConditionClass.values()) {
            factor(each);
        }
        for (int month = 1; month <= 12; month++) {
            seasonFactor(month);
        }
        List.of(
                        "story discontinued-drive",
                        "story receipts",
                        "story far-from-water",
                        "sale fading",
                        "sale paid-share",
                        "bargain repairs",
                        "extras useful",
                        "extras other",
                        "extras cap")
                .forEach(this::modifier);
    }

    private static Choice choice(Row row, Map<String, RetentionCurve> curves) {
        RetentionCurve curve = curves.get(row.text("curve"));
        if (curve == null) {
            throw row.complaint("retention.csv has no curve named " + row.text("curve"));
        }
        return new Choice(row.text("kind"), row.text("material"), row.text("drive"), curve);
    }
}
