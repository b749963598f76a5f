package org.keelweigh.ui.format;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.keelweigh.quantity.Force;
import org.keelweigh.quantity.Length;
import org.keelweigh.quantity.Mass;

/** Reads and writes numbers with or without a unit; a bare number is in the unit beside the field. */
enum Reading {
    MASS("kg", "lb", Unit.MASSES),
    LENGTH("m", "ft", Unit.LENGTHS),
    BREADTH("cm", "in", Unit.LENGTHS),
    WAY("m", "ft", Unit.LENGTHS),
    TRAVEL("km", "mi", Unit.LENGTHS),
    FORCE("N", "lbf", Unit.FORCES),
    PERCENT("%", "%", Map.of("%", 0.01)),
    NUMBER("", "", Map.of("", 1.0));

    private static final Pattern PART =
            Pattern.compile("([+-]?[0-9]+(?:[.,][0-9]+)*|[.,][0-9]+)\\s*([\\p{L}%'\"′″]*)\\s*");
    private static final MathContext TYPED_DIGITS = new MathContext(7);
    private static final int LONGEST = 40;

    private final String metric;
    private final String us;
    private final Map<String, Double> factors;

    Reading(String metric, String us, Map<String, Double> factors) {
        this.metric = metric;
        this.us = us;
        this.factors = factors;
    }

    String unit(boolean inUs) {
        return inUs ? us : metric;
    }

    String edit(double value, boolean inUs) {
        if (this == LENGTH && inUs) {
            return feetAndInches(value);
        }
        return plain(value / factors.get(unit(inUs)));
    }

    double parse(String text, boolean inUs) {
        String rest = text.strip().toLowerCase(Locale.ROOT);
        Matcher part = PART.matcher(rest);
        if (rest.length() > LONGEST || !part.lookingAt()) {
            throw unreadable(text, inUs);
        }
        double value = amount(part, unit(inUs), text, inUs);
        boolean feet = isFeet(part.group(2), inUs);
        if (part.end() < rest.length()) {
            int end = part.end();
            part.region(end, rest.length());
            if (!feet || !part.lookingAt() || part.end() < rest.length()) {
                throw unreadable(text, inUs);
            }
            value += amount(part, "in", text, inUs);
        }
        return value;
    }

    private boolean isFeet(String unit, boolean inUs) {
        return List.of("ft", "foot", "feet", "'", "′").contains(unit)
                || unit.isEmpty() && inUs && "ft".equals(unit(true));
    }

    private double amount(Matcher part, String bareUnit, String text, boolean inUs) {
        String unit = part.group(2).isEmpty() ? bareUnit : part.group(2);
        Double factor = factors.get(unit.equals("n") ? "N" : unit);
        if (factor == null) {
            throw unreadable(text, inUs);
        }
        return number(part.group(1)) * factor;
    }

    /** A comma or point followed by exactly three digits at the end sets thousands apart only when a number precedes it that has no other mark. */
    private static double number(String digits) {
        int lastMark = Math.max(digits.lastIndexOf('.'), digits.lastIndexOf(','));
        if (lastMark < 0) {
            return Double.parseDouble(digits);
        }
        boolean thousands = digits.charAt(lastMark) == ',' && digits.length() - lastMark == 4 && lastMark > 0;
        String whole = digits.substring(0, lastMark).replaceAll("[.,]", "");
        String fraction = digits.substring(lastMark + 1);
        return Double.parseDouble(thousands ? whole + fraction : (whole.isEmpty() ? "0" : whole) + "." + fraction);
    }

    private static String feetAndInches(double value) {
        double inches = new Length(value).inches();
        double rounded = Double.parseDouble(plain(inches));
        long feet = (long) Math.floor(rounded / 12);
        String rest = plain(rounded - 12 * feet);
        return "0".equals(rest) ? feet + " ft" : feet + " ft " + rest + " in";
    }

    /** Seven digits bring back whatever a person types, and hide the last digits of a conversion. */
    private static String plain(double value) {
        BigDecimal rounded = new BigDecimal(value).round(TYPED_DIGITS).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    private IllegalArgumentException unreadable(String text, boolean inUs) {
        String unit = unit(inUs);
        String example = this == LENGTH && inUs ? "12 ft 6 in" : unit.isEmpty() ? "12.5" : "12.5 " + unit;
        return new IllegalArgumentException("\"" + (text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text)
                + "\" is not a quantity that can be read; write it like " + example + ".");
    }

    private static final class Unit {
        static final Map<String, Double> MASSES = Map.of(
                "kg", 1.0, "g", 0.001, "lb", Mass.KG_PER_POUND, "lbs", Mass.KG_PER_POUND, "pounds", Mass.KG_PER_POUND);
        static final Map<String, Double> FORCES =
                Map.of("N", 1.0, "lbf", Force.N_PER_POUND_FORCE, "kgf", Mass.STANDARD_GRAVITY);
        static final Map<String, Double> LENGTHS = Map.ofEntries(
                Map.entry("m", 1.0),
                Map.entry("cm", 0.01),
                Map.entry("mm", 0.001),
                Map.entry("km", 1000.0),
                Map.entry("mi", Length.M_PER_MILE),
                Map.entry("miles", Length.M_PER_MILE),
                Map.entry("ft", Length.M_PER_FOOT),
                Map.entry("foot", Length.M_PER_FOOT),
                Map.entry("feet", Length.M_PER_FOOT),
                Map.entry("'", Length.M_PER_FOOT),
                Map.entry("′", Length.M_PER_FOOT),
                Map.entry("in", Length.M_PER_INCH),
                Map.entry("inch", Length.M_PER_INCH),
                Map.entry("inches", Length.M_PER_INCH),
                Map.entry("\"", Length.M_PER_INCH),
                Map.entry("″", Length.M_PER_INCH));
    }
}
