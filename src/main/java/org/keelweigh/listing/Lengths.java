package org.keelweigh.listing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Finds length and beam: labelled, in pairs such as 320 x 81, or told apart by what a small boat can measure. */
final class Lengths {

    private static final double FOOT_M = 0.3048;
    private static final double INCH_M = 0.0254;
    private static final double SHORTEST_M = 1.75;
    private static final double LONGEST_M = 9.5;
    private static final double NARROWEST_M = 0.35;
    private static final double WIDEST_M = 1.75;

    private static final String NUMBER = WrittenNumber.PATTERN;
    private static final String FOOT = "(?:'(?!')|-?(?:ft|feet|foot)(?:er)?\\b\\.?)";
    private static final String INCH =
            "(?:\"|''|-?inch(?:es)?\\b|-?in\\b\\.?(?! ?[a-z])|-?in\\b(?= (?:wide|beam|width|long|x)))";
    private static final String FRACTION = "(?: ?(?<top>\\d)/(?<bottom>\\d{1,2}))?";

    /** Feet with inches; bare inches only straight after an apostrophe: 10'6. */
    private static final String FEET_INCHES = "(?<feet>\\d{1,2}) ?(?:" + FOOT
            + " ?-? ?(?<inches>\\d{1,2}(?:\\.\\d{1,2})?)" + FRACTION + " ?" + INCH + "|'(?<tight>\\d{1,2})(?![\\d.]))";

    private static final String UNIT =
            "(?<unit>mm\\b|cms?\\b|m\\b|met(?:re|er)s?\\b|mtrs?\\b|" + FOOT + "|" + INCH + ")";

    private static final Pattern ONE = Pattern.compile("(?<![\\d.,$£€])(?:" + FEET_INCHES + "|(?<number>" + NUMBER
            + ")(?: (?<top2>\\d)/(?<bottom2>\\d{1,2}))?(?<half> and a half)? ?" + UNIT + ")");
    private static final Pattern PAIR = Pattern.compile("(?<![\\d.,$£€])(?:" + FEET_INCHES + "|(?<number>" + NUMBER
            + ") ?" + UNIT + "?)(?: ?long)? {0,2}(?:x|by) {0,2}(?<second>" + NUMBER
            + ")(?<glued> ?(?<unit2>mm\\b|cms?\\b|m\\b|"
            + FOOT + "|" + INCH
            + "))?(?: ?(?:wide|beam))?(?: {0,2}(?:x|by) {0,2}\\d{1,3}(?:[.,]\\d)?(?: ?(?<unit3>mm\\b|cms?\\b|m\\b|"
            + INCH + "))?)?");
    private static final Pattern SPELT = Pattern.compile("\\b(?<word>eight|nine|ten|eleven|twelve|thirteen|fourteen|"
            + "fifteen|sixteen|seventeen|eighteen)(?<half> and a half)?[ -](?:foot|feet|footer|ft)\\b");
    private static final List<String> SPELT_FROM_EIGHT = List.of(
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen");

    private static final Pattern OTHER_BEFORE = Pattern.compile(
            "\\b(?:paddles?|oars?|leash|rope|line|chain|depth|"
                    + "draft|draught|thickness|cockpit|hatch|wheels?|trailer|mast|within|tall|i'm|i am|height|shaft|inseam)\\b[^a-z]{0,3}(?:is |of |about )?$");
    private static final Pattern OTHER_AFTER = Pattern.compile(
            "^[ -]?(?:[a-z]{1,10} )?(?:paddles?(?! ?board)|oars?|leash|rope|"
                    + "line|chain|deep|thick|tall|high|trailers?|shaft|away|from|of rope|hatch|cockpit|wheels?|waves?|draft|draught|depth|inseam)\\b");
    private static final Pattern LENGTH_WORD =
            Pattern.compile("\\b(?:length|loa|lg|l)\\b[^a-z]{0,3}(?:is |of |about |approx\\.? |overall )?$");
    private static final Pattern BEAM_WORD =
            Pattern.compile("\\b(?:beam|width|breadth|w|b)\\b[^a-z/]{0,3}(?:is |of |about |approx\\.? )?$");
    private static final Pattern LONG_AFTER = Pattern.compile("^[ -]?(?:in )?(?:long|length|loa)\\b");
    private static final Pattern WIDE_AFTER = Pattern.compile("^[ -]?(?:in )?(?:wide|beam|width|across)\\b");
    private static final Pattern BOAT_AFTER = Pattern.compile(
            "^[ -]?(?:[a-z-]{1,12} ){0,3}(?:kayaks?|canoe|boat|board|sup|sit|paddle ?board|rowboat|dinghy|skiff)\\b");

    private final Source source;
    private final List<Found> found = new ArrayList<>();
    private final List<Span> spans = new ArrayList<>();

    private Lengths(Source source) {
        this.source = source;
    }

    private record Found(Fact fact, double metres, int start, int end, int score, String note) {}

    static Lengths in(Source source) {
        Lengths lengths = new Lengths(source);
        lengths.pairs();
        lengths.singles();
        lengths.spelt();
        return lengths;
    }

    /** Every stretch that is a length, wanted or not. */
    List<Span> spans() {
        return spans;
    }

    List<Proposal> proposals() {
        List<Proposal> proposals = new ArrayList<>();
        for (Fact fact : List.of(Fact.LENGTH_M, Fact.BEAM_M)) {
            found.stream()
                    .filter(each -> each.fact == fact)
                    .max(Comparator.comparingInt(Found::score).thenComparing(Found::start, Comparator.reverseOrder()))
                    .ifPresent(best -> proposals.add(propose(best)));
        }
        return proposals;
    }

    private Proposal propose(Found best) {
        String other = found.stream()
                .filter(each -> each.fact == best.fact && Math.abs(each.metres - best.metres) > 0.02 * best.metres)
                .findFirst()
                .map(each -> "The text also says " + source.original().substring(each.start, each.end) + ".")
                .orElse("");
        String note = (best.note + " " + other).strip();
        Certainty certainty = best.score >= 3 && note.isEmpty()
                ? Certainty.PLAIN
                : best.score >= 1 ? Certainty.LIKELY : Certainty.UNSURE;
        return source.propose(best.fact, new Proposal.Quantity(best.metres), best.start, best.end, note, certainty);
    }

    private void pairs() {
        Matcher pair = PAIR.matcher(source.plain());
        while (pair.find()) {
            String unit2 = pair.group("unit2") != null ? pair.group("unit2") : pair.group("unit3");
            OptionalDouble first = pair.group("number") == null ? feetInches(pair) : OptionalDouble.empty();
            double firstUnit = first.isPresent() ? FOOT_M : metresPer(pair.group("unit"));
            double secondUnit = metresPer(unit2);
            String note = "";
            if (Double.isNaN(secondUnit)) {
                secondUnit = firstUnit == FOOT_M ? INCH_M : firstUnit;
                note = "The width has no unit; taken as that of the length, or inches after feet.";
            }
            if (Double.isNaN(firstUnit)) {
                firstUnit = secondUnit == INCH_M ? FOOT_M : secondUnit;
                note = "";
            }
            if (Double.isNaN(firstUnit)) {
                firstUnit = secondUnit = guessedUnit(pair.group("number"));
                note = "Neither number has a unit; taken as what a boat can measure.";
            }
            if (first.isEmpty()) {
                first = WrittenNumber.of(pair.group("number")).within(firstUnit, SHORTEST_M, LONGEST_M);
            }
            OptionalDouble second = WrittenNumber.of(pair.group("second")).within(secondUnit, NARROWEST_M, WIDEST_M);
            if (first.isPresent()
                    && second.isPresent()
                    && first.getAsDouble() <= LONGEST_M
                    && first.getAsDouble() >= SHORTEST_M) {
                spans.add(new Span(pair.start(), pair.end()));
                found.add(new Found(Fact.LENGTH_M, first.getAsDouble(), pair.start(), pair.end(), 3, note));
                found.add(new Found(Fact.BEAM_M, second.getAsDouble(), pair.start(), pair.end(), 3, note));
            }
        }
    }

    private static double guessedUnit(String number) {
        double value = WrittenNumber.of(number).asMoney();
        return value >= 1500 ? 0.001 : value >= 150 ? 0.01 : Double.NaN;
    }

    private void singles() {
        Matcher one = ONE.matcher(source.plain());
        while (one.find()) {
            if (!Span.free(spans, one.start(), one.end())) {
                continue;
            }
            OptionalDouble metres = one.group("number") == null ? feetInches(one) : single(one);
            spans.add(new Span(one.start(), one.end()));
            metres.ifPresent(value -> judge(value, one.start(), one.end(), doubtful(one)));
        }
    }

    private static String doubtful(Matcher one) {
        return one.group("number") != null
                        && WrittenNumber.of(one.group("number")).ambiguous()
                ? "The comma or point may mark thousands or decimals; taken as what a boat can measure."
                : "";
    }

    private static OptionalDouble single(Matcher one) {
        double unit = metresPer(one.group("unit"));
        WrittenNumber number = WrittenNumber.of(one.group("number"));
        OptionalDouble metres = number.within(unit, NARROWEST_M, LONGEST_M);
        double more = one.group("half") != null ? 0.5 : 0;
        if (one.group("top2") != null) {
            more = fraction(one.group("top2"), one.group("bottom2"));
        }
        return metres.isPresent() ? OptionalDouble.of(metres.getAsDouble() + more * unit) : metres;
    }

    private static OptionalDouble feetInches(Matcher at) {
        String written = at.group("inches") != null ? at.group("inches") : at.group("tight");
        double inches = Double.parseDouble(written);
        if (at.group("top") != null) {
            inches += fraction(at.group("top"), at.group("bottom"));
        }
        return inches < 12
                ? OptionalDouble.of(Integer.parseInt(at.group("feet")) * FOOT_M + inches * INCH_M)
                : OptionalDouble.empty();
    }

    private static double fraction(String top, String bottom) {
        double below = Double.parseDouble(bottom);
        return below == 0 ? 0 : Double.parseDouble(top) / below;
    }

    private void spelt() {
        Matcher words = SPELT.matcher(source.plain());
        while (words.find()) {
            double feet = 8 + SPELT_FROM_EIGHT.indexOf(words.group("word")) + (words.group("half") != null ? 0.5 : 0);
            spans.add(new Span(words.start(), words.end()));
            judge(feet * FOOT_M, words.start(), words.end(), "");
        }
    }

    private void judge(double metres, int start, int end, String note) {
        String before = source.clauseBefore(start, 30, 0);
        String after = source.clauseAfter(end, 40);
        if (OTHER_BEFORE.matcher(before).find() || OTHER_AFTER.matcher(after).find()) {
            return;
        }
        boolean beamWord =
                WIDE_AFTER.matcher(after).find() || BEAM_WORD.matcher(before).find();
        boolean lengthWord =
                LONG_AFTER.matcher(after).find() || LENGTH_WORD.matcher(before).find();
        if (beamWord && !lengthWord && metres <= 3) {
            found.add(new Found(Fact.BEAM_M, metres, start, end, 3, note));
        } else if (metres >= SHORTEST_M && metres <= LONGEST_M) {
            int score = lengthWord ? 3 : BOAT_AFTER.matcher(after).find() ? 2 : 1;
            found.add(new Found(Fact.LENGTH_M, metres, start, end, score, note));
        } else if (metres <= WIDEST_M && followsLength(start)) {
            found.add(new Found(
                    Fact.BEAM_M, metres, start, end, 1, (note + " Not labelled; it follows the length.").strip()));
        }
    }

    private boolean followsLength(int start) {
        return found.stream()
                .anyMatch(each -> each.fact == Fact.LENGTH_M && start - each.end >= 0 && start - each.end < 12);
    }

    private static double metresPer(@Nullable String unit) {
        if (unit == null) {
            return Double.NaN;
        }
        String bare = unit.replace("-", "").strip();
        return switch (bare.charAt(0)) {
            case 'f' -> FOOT_M;
            case '"', 'i' -> INCH_M;
            case '\'' -> bare.length() == 2 ? INCH_M : FOOT_M;
            case 'c' -> 0.01;
            default -> bare.startsWith("mm") ? 0.001 : 1;
        };
    }
}
