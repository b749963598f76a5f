package org.keelweigh.listing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds model year and age. */
final class Years {

    private static final Pattern YEAR = Pattern.compile("(?<![\\d.,'$£€/-])(?:(?:0?[1-9]|1[0-2])/)?(?<year>19[5-9]\\d"
            + "|20[0-4]\\d)(?![\\d/-]|[.,]\\d| ?(?:mm|cm|kg|lb|€|\\$|£|usd|eur|gbp|obo|ono" + "|vb)\\b)");
    private static final Pattern SHORT = Pattern.compile(
            "(?:\\bmy ?'?(?<my>\\d{2})\\b|(?<![\\d\\w])'(?<short>\\d{2}) (?:model|kayak|canoe|board|sit))");
    private static final Pattern NAMED_BEFORE =
            Pattern.compile("\\b(?:model year|year|model|my|built|built in|made in|made|manufactured(?: in)?"
                    + "|vintage|launched|from new in)[: ]{0,2}$|\\bbuilt\\b[^.;,\\d]{1,24}$");
    private static final Pattern BOUGHT_BEFORE =
            Pattern.compile("\\b(?:bought|purchased|new|got it|acquired|from|registered)(?: it| her| new"
                    + "| brand new)?(?: in)?[: ]{0,2}$");
    private static final Pattern OTHER_BEFORE =
            Pattern.compile("\\b(?:since|until|till|serviced?|seats?|valid|licen[cs]e|tested|expires?|sticker"
                    + "|season|summer|replaced|hatch|battery|refurbished|refinished|painted|in stock"
                    + "|registration)\\b[^.;]{0,14}$");
    private static final Pattern NAMED_AFTER =
            Pattern.compile("^ (?:model|[a-z'\"\\d.-]{1,12} (?:kayak|canoe)|sit|kayak|canoe|pedal|touring"
                    + "|inflatable|sup|paddle ?board|fishing|row|\\d{1,2} ?(?:ft|'))");

    private static final String COUNT =
            "(?<count>\\d{1,2}(?:[.,]5)?|one|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty)";
    private static final Pattern AGE = Pattern.compile(
            "\\b" + COUNT + "[ -]?(?<unit>yrs?|years?|seasons?|months?|mths?)[ -]?(?<how>old|of age|young|ago)\\b");
    private static final Pattern CHILD_AFTER =
            Pattern.compile("^ ?(?:son|daughter|kids?|boy|girl|child|dog|lad|twins|grand\\w{1,8}|and up)\\b");
    private static final Pattern BOUGHT = Pattern.compile("\\b(?:bought|purchased|got|new|paid)\\b");
    private static final Map<String, Integer> SPELT = Map.ofEntries(
            Map.entry("one", 1),
            Map.entry("two", 2),
            Map.entry("three", 3),
            Map.entry("four", 4),
            Map.entry("five", 5),
            Map.entry("six", 6),
            Map.entry("seven", 7),
            Map.entry("eight", 8),
            Map.entry("nine", 9),
            Map.entry("ten", 10),
            Map.entry("twelve", 12),
            Map.entry("fifteen", 15),
            Map.entry("twenty", 20));

    private record Found(int year, int start, int end, int score, String note) {}

    private final Source source;
    private final Claims taken;

    private Years(Source source, Claims taken) {
        this.source = source;
        this.taken = taken;
    }

    static List<Proposal> in(Source source, Claims taken) {
        Years years = new Years(source, taken);
        List<Proposal> proposals = new ArrayList<>();
        years.modelYear(proposals);
        years.age(proposals);
        return proposals;
    }

    private void modelYear(List<Proposal> proposals) {
        List<Found> found = new ArrayList<>();
        Matcher year = YEAR.matcher(source.plain());
        while (year.find()) {
            if (taken.free(year.start(), year.end())) {
                judge(year, found);
            }
        }
        Matcher abbreviated = SHORT.matcher(source.plain());
        while (abbreviated.find()) {
            String digits = abbreviated.group("my") != null ? abbreviated.group("my") : abbreviated.group("short");
            int pair = Integer.parseInt(digits);
            found.add(new Found(
                    pair < 50 ? 2000 + pair : 1900 + pair,
                    abbreviated.start(),
                    abbreviated.end(),
                    2,
                    "Written with two digits; the century is a guess."));
        }
        found.stream()
                .max(Comparator.comparingInt(Found::score).thenComparing(Found::start, Comparator.reverseOrder()))
                .ifPresent(best -> proposals.add(source.propose(
                        Fact.MODEL_YEAR,
                        new Proposal.Quantity(best.year),
                        best.start,
                        best.end,
                        best.note,
                        best.score >= 3 ? Certainty.PLAIN : best.score == 2 ? Certainty.LIKELY : Certainty.UNSURE)));
    }

    private void judge(Matcher at, List<Found> found) {
        String before = source.clauseBefore(at.start(), 30, 0);
        String after = source.clauseAfter(at.end(), 30);
        int year = Integer.parseInt(at.group("year"));
        if (OTHER_BEFORE.matcher(before).find()) {
            return;
        }
        if (NAMED_BEFORE.matcher(before).find() || NAMED_AFTER.matcher(after).find()) {
            found.add(new Found(year, at.start(), at.end(), 3, ""));
        } else if (BOUGHT_BEFORE.matcher(before).find()) {
            found.add(new Found(year, at.start(), at.end(), 2, "Not said to be the model year, which may be earlier."));
        } else if (before.isBlank()) {
            found.add(new Found(year, at.start(), at.end(), 1, "A year stands alone; taken as the model year."));
        }
    }

    private void age(List<Proposal> proposals) {
        Matcher age = AGE.matcher(source.plain());
        while (age.find()) {
            if (CHILD_AFTER.matcher(source.clauseAfter(age.end(), 20)).find()) {
                continue;
            }
            String clause = source.clauseBefore(age.start(), 30, 0) + source.clauseAfter(age.end(), 10);
            boolean ago = age.group("how").equals("ago");
            if (ago && !BOUGHT.matcher(clause).find()) {
                continue;
            }
            boolean seasons = age.group("unit").startsWith("s");
            double years = count(age.group("count")) / (age.group("unit").startsWith("m") ? 12.0 : 1.0);
            String note =
                    ago ? "Counted from when it was bought." : seasons ? "Counted in seasons; taken as years." : "";
            proposals.add(source.propose(
                    Fact.AGE_YEARS,
                    new Proposal.Quantity(years),
                    age.start(),
                    age.end(),
                    note,
                    note.isEmpty() ? Certainty.PLAIN : Certainty.LIKELY));
            return;
        }
    }

    private static double count(String written) {
        Integer spelt = SPELT.get(written);
        return spelt != null ? spelt : Double.parseDouble(written.replace(',', '.'));
    }
}
