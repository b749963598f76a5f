package org.keelweigh.shortlist;

import static java.util.Map.entry;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.Coded;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.SellerKind;
import org.keelweigh.fit.PaddlingUse;
import org.keelweigh.fit.Waters;

/** Writes what stands in a field of a document as people read it: figures in their units, codes in words. */
public final class FieldValues {

    private static final List<String> WEED = List.of("none", "here and there", "often in the way", "thick");

    /** Whose figures are not written by the unit at the end of their name. */
    private static final Map<String, BiFunction<Display, Double, String>> FIGURES = Map.ofEntries(
            entry("beamM", Display::breadth),
            entry("draughtM", Display::breadth),
            entry("hipWidthM", Display::breadth),
            entry("leastDepthM", Display::breadth),
            entry("distanceM", Display::way),
            entry("askingPrice", Display::money),
            entry("priceNew", Display::money),
            entry("budget", Display::money),
            entry("low", Display::money),
            entry("likely", Display::money),
            entry("high", Display::money),
            entry("discountRate", FieldValues::percent),
            entry("salesTax", FieldValues::percent),
            entry("modelYear", (display, year) -> plain(year)),
            entry("daysListed", (display, days) -> plain(days) + " days"),
            entry("daysToLaunch", (display, days) -> plain(days) + " days"),
            entry("outingsPerYear", (display, outings) -> Display.number(outings, 0) + " outings a year"),
            entry("horizonYears", (display, years) -> plain(years) + " years"),
            entry("weedLevel", (display, level) -> WEED.get(Math.clamp(level.intValue(), 0, WEED.size() - 1))));

    private static final Map<String, Function<String, String>> CODES = Map.ofEntries(
            entry("kind", code -> label(BoatKind.class, code, BoatKind::label)),
            entry("material", code -> label(HullMaterial.class, code, HullMaterial::label)),
            entry("drive", code -> label(DriveKind.class, code, DriveKind::label)),
            entry("seller", code -> label(SellerKind.class, code, SellerKind::label)),
            entry("mainWater", code -> label(Waters.class, code, Waters::label)),
            entry("hardestWater", code -> label(Waters.class, code, Waters::label)),
            entry("storage", code -> label(StoragePlace.class, code, StoragePlace::label)),
            entry("use", code -> label(PaddlingUse.class, code, PaddlingUse::label)),
            entry("certainty", code -> label(Certainty.class, code, Certainty::label)),
            entry("units", code -> label(UnitSystem.class, code, each -> each == UnitSystem.US ? "US" : "metric")),
            entry("outcome", code -> label(Outcome.class, code, Outcome::label)));

    private static final List<String> OWN_WORDS = List.of("name", "note", "notes", "number");
    private static final String NOTHING = "empty";

    private final Display display;
    private final UnaryOperator<String> wordsOf;

    /**
     * Prepares the writing.
     *
     * @param display how figures are written
     * @param wordsOf the words for an id of a catalogue, such as a kind of cart
     */
    public FieldValues(Display display, UnaryOperator<String> wordsOf) {
        this.display = display;
        this.wordsOf = wordsOf;
    }

    /**
     * Writes a value.
     *
     * @param path where it stands, such as {@code boat.lengthM}
     * @param written the value as the document has it
     */
    public String of(String path, String written) {
        String name = path.substring(path.lastIndexOf('.') + 1);
        if (path.startsWith(VisitBook.FIELD)) {
            return noted(name, written);
        }
        if (OWN_WORDS.contains(name) || path.startsWith("liftedRulings.")) {
            return written.equals(NOTHING) ? written : "“" + written + "”";
        }
        if (written.equals("true") || written.equals("false")) {
            return written.equals("true") ? "yes" : "no";
        }
        if (CODES.containsKey(name)) {
            return CODES.get(name).apply(written);
        }
        try {
            return figure(path, name, Double.parseDouble(written));
        } catch (NumberFormatException e) {
            String words = wordsOf.apply(written);
            return words.equals(written) ? written.replace('-', ' ') : words;
        }
    }

    /** Notes of a visit are people's own words but for two figures. */
    private String noted(String name, String written) {
        if (written.equals(NOTHING)) {
            return written;
        }
        return switch (name) {
            case "minutes" -> written + " minutes";
            case "agreedPrice" -> display.money(Double.parseDouble(written));
            default -> "“" + written + "”";
        };
    }

    private String figure(String path, String name, double value) {
        if (FIGURES.containsKey(name)) {
            return FIGURES.get(name).apply(display, value);
        }
        if (path.startsWith("weights.")) {
            return plain(value) + " points";
        }
        if (path.startsWith("liking.")) {
            return plain(value) + " of 10";
        }
        if (name.endsWith("Kg")) {
            return display.mass(value);
        }
        if (name.endsWith("M")) {
            return display.length(value);
        }
        return name.endsWith("N") ? display.force(value) : plain(value);
    }

    private static String percent(Display display, double share) {
        return Display.number(100 * share, 1) + " %";
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : Display.number(value, 2);
    }

    private static <E extends Enum<E> & Coded> String label(Class<E> type, String code, Function<E, String> label) {
        return Arrays.stream(type.getEnumConstants())
                .filter(each -> each.code().equals(code))
                .findFirst()
                .map(label)
                .orElse(code);
    }
}
