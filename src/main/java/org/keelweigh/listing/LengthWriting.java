package org.keelweigh.listing;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** How lengths are written: 12'6", 12 ft 6 in, 3,81 m, 320 x 81 cm, twelve and a half foot. Every repeat is bounded. */
final class LengthWriting {

    static final double FOOT_M = 0.3048;
    static final double INCH_M = 0.0254;

    private static final String NUMBER = WrittenNumber.PATTERN;
    private static final String NOT_INSIDE_NUMBER = "(?<![\\d$£€])(?<!\\d[.,])";

    /** The apostrophe is no foot mark before three digits, where it marks thousands. */
    private static final String FOOT = "(?:'(?!'|\\d{3})|-?(?:ft|feet|foot)(?:er)?\\b)";

    /** "in" is also a preposition: then a word follows. */
    private static final String INCH =
            "(?:\"|''|-?inch(?:es)?\\b|-?in\\b\\.?(?! ?[a-z])|-?in\\b(?= (?:wide|beam|width|long|x)))";

    private static final String FRACTION = "(?: ?(?<top>\\d)/(?<bottom>\\d{1,2}))?";
    private static final String PAUSE = "(?= ?(?:[,;!)\\n]|\\.(?!\\d)|$|and\\b|by\\b|x\\b|long\\b))";

    /** Feet with inches; bare inches straight after an apostrophe (10'6) or before a pause (12ft 4). */
    private static final String FEET_INCHES = "(?<feet>\\d{1,2}) ?(?:" + FOOT
            + "\\.? ?-? ?(?<inches>\\d{1,2}(?:\\.\\d{1,2})?)" + FRACTION
            + " ?(?:\"|''|-?inch(?:es)?\\b|-?in\\b)|'(?<tight>\\d{1,2})(?![\\d.])"
            + "|-?(?:ft|feet|foot) ?(?<loose>\\d{1,2})" + PAUSE + ")";

    private static final String METRIC = "mm\\b|cms?\\b|m\\b|met(?:re|er)s?\\b|mtrs?\\b";

    /** One length: groups of {@link #feetInches}, or number and unit. */
    static final Pattern ONE = Pattern.compile(NOT_INSIDE_NUMBER + "(?:" + FEET_INCHES + "|(?<number>" + NUMBER
            + ")(?: (?<top2>\\d)/(?<bottom2>\\d{1,2}))?(?:-?ish)?(?<half> and a half)? ?(?<unit>" + METRIC + "|" + FOOT
            + "|" + INCH + "))");

    /** Length by beam, perhaps by thickness. */
    static final Pattern PAIR = Pattern.compile(NOT_INSIDE_NUMBER + "(?:" + FEET_INCHES + "|(?<number>" + NUMBER
            + ") ?(?<unit>" + METRIC + "|" + FOOT + "|" + INCH + ")?)(?: ?long)? {0,2}(?:x|by) {0,2}(?<second>" + NUMBER
            + ")(?: ?(?<unit2>" + METRIC + "|" + INCH + "|" + FOOT + "(?: ?(?<more>\\d{1,2})(?!\\d|[.,]\\d) ?" + INCH
            + "?)?))?(?: ?(?:wide|beam))?"
            + "(?: {0,2}(?:x|by) {0,2}\\d{1,3}(?:[.,]\\d)?(?: ?(?<unit3>mm\\b|cms?\\b|m\\b|" + INCH + "))?)?");

    /** A width without unit. */
    static final Pattern BARE_WIDTH = Pattern.compile(NOT_INSIDE_NUMBER + "(?<number>\\d{2,3}) wide\\b");

    static final Pattern SPELT = Pattern.compile("\\b(?<word>eight|nine|ten|eleven|twelve|thirteen|fourteen|"
            + "fifteen|sixteen|seventeen|eighteen)(?<half> and a half)?[ -](?:foot|feet|footer|ft)\\b");
    private static final List<String> SPELT_FROM_EIGHT = List.of(
            ("eight nine ten eleven twelve thirteen fourteen " + "fifteen sixteen seventeen eighteen").split(" "));

    private LengthWriting() {}

    static OptionalDouble feetInches(Matcher at) {
        String written = Stream.of("inches", "tight", "loose")
                .map(at::group)
                .filter(Objects::nonNull)
                .findFirst()
                .orElseThrow();
        double inches = Double.parseDouble(written);
        if (at.group("top") != null) {
            inches += fraction(at.group("top"), at.group("bottom"));
        }
        return inches < 12
                ? OptionalDouble.of(Integer.parseInt(at.group("feet")) * FOOT_M + inches * INCH_M)
                : OptionalDouble.empty();
    }

    /** A match of {@link #ONE}, if it lies within the bounds. */
    static OptionalDouble one(Matcher at, double lowM, double highM) {
        if (at.group("number") == null) {
            return feetInches(at);
        }
        double unit = metresPer(at.group("unit"));
        double more = at.group("half") != null ? 0.5 : 0;
        if (at.group("top2") != null) {
            more = fraction(at.group("top2"), at.group("bottom2"));
        }
        OptionalDouble metres = WrittenNumber.of(at.group("number")).within(unit, lowM, highM);
        return metres.isPresent() ? OptionalDouble.of(metres.getAsDouble() + more * unit) : metres;
    }

    static double spelt(Matcher at) {
        return (8 + SPELT_FROM_EIGHT.indexOf(at.group("word")) + (at.group("half") != null ? 0.5 : 0)) * FOOT_M;
    }

    private static double fraction(String top, String bottom) {
        double below = Double.parseDouble(bottom);
        return below == 0 ? 0 : Double.parseDouble(top) / below;
    }

    /** Metres per unit as written; not a number if there is no unit. */
    static double metresPer(@Nullable String unit) {
        if (unit == null) {
            return Double.NaN;
        }
        String bare = unit.replace("-", "").strip();
        return switch (bare.charAt(0)) {
            case 'f' -> FOOT_M;
            case '"', 'i' -> INCH_M;
            case '\'' -> bare.startsWith("''") ? INCH_M : FOOT_M;
            case 'c' -> 0.01;
            default -> bare.startsWith("mm") ? 0.001 : 1;
        };
    }
}
