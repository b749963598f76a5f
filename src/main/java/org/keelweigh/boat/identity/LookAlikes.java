package org.keelweigh.boat.identity;

import java.time.Year;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds readings of twelve characters in which look-alikes were taken for one another. */
final class LookAlikes {

    private static final Map<Character, String> TWINS = Map.ofEntries(
            Map.entry('O', "0"),
            Map.entry('Q', "0"),
            Map.entry('I', "1"),
            Map.entry('S', "5"),
            Map.entry('B', "8"),
            Map.entry('Z', "2"),
            Map.entry('0', "OQ"),
            Map.entry('1', "I"),
            Map.entry('5', "S"),
            Map.entry('8', "B"),
            Map.entry('2', "Z"));

    /** More look-alikes than this in one number are no slip but another text. */
    private static final int MOST_CHANGES = 4;

    private static final int MOST_READINGS = 6;

    private LookAlikes() {}

    /** Readings that fit a layout: those with an impossible date last, otherwise fewest changes first. */
    static List<Suggestion> readings(Optional<String> country, String twelve, Year today) {
        List<Candidate> found = new ArrayList<>();
        for (Layout layout : Layout.values()) {
            forced(layout, HullNumber.digitsInMaker(country), twelve).stream()
                    .filter(text -> Layout.of(text).firstBreak(text, HullNumber.digitsInMaker(country)) < 0)
                    .map(text -> Candidate.of(HullNumber.of(country, text), twelve, today))
                    .filter(candidate -> !found.contains(candidate))
                    .forEach(found::add);
        }
        return found.stream()
                .sorted(Comparator.comparing(Candidate::possible).reversed().thenComparing(Candidate::changes))
                .limit(MOST_READINGS)
                .map(candidate -> candidate.suggestion(twelve))
                .toList();
    }

    /** Readings with one date character exchanged that make an impossible date possible. */
    static List<Suggestion> possibleInstead(HullNumber number, Year today) {
        String twelve = number.twelve();
        List<Suggestion> found = new ArrayList<>();
        for (int place = Layout.DATE_START; place < Layout.LENGTH; place++) {
            for (char twin : TWINS.getOrDefault(twelve.charAt(place), "").toCharArray()) {
                String text = twelve.substring(0, place) + twin + twelve.substring(place + 1);
                if (Layout.of(text).firstBreak(text, HullNumber.digitsInMaker(number.country())) < 0) {
                    Candidate candidate = Candidate.of(HullNumber.of(number.country(), text), twelve, today);
                    if (candidate.possible()) {
                        found.add(candidate.suggestion(twelve));
                    }
                }
            }
        }
        return found;
    }

    /** All texts in which each character the layout forbids is exchanged for a twin it allows. */
    private static List<String> forced(Layout layout, boolean digitsInMaker, String twelve) {
        List<String> texts = List.of("");
        int changes = 0;
        for (int place = 0; place < Layout.LENGTH; place++) {
            char found = twelve.charAt(place);
            String allowed = layout.allowedAt(place, digitsInMaker);
            String choices = String.valueOf(found);
            if (allowed.indexOf(found) < 0) {
                choices = kept(TWINS.getOrDefault(found, ""), allowed);
                if (++changes > MOST_CHANGES) {
                    return List.of();
                }
            }
            String each = choices;
            texts = texts.stream()
                    .flatMap(text -> each.chars().mapToObj(c -> text + (char) c))
                    .toList();
        }
        return texts;
    }

    private static String kept(String twins, String allowed) {
        return twins.chars()
                .filter(twin -> allowed.indexOf(twin) >= 0)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private record Candidate(HullNumber number, int changes, boolean possible) {

        static Candidate of(HullNumber number, String typed, Year today) {
            int changes = 0;
            for (int place = 0; place < Layout.LENGTH; place++) {
                changes += number.twelve().charAt(place) == typed.charAt(place) ? 0 : 1;
            }
            boolean possible = DateChecks.of(number, today).stream()
                    .noneMatch(each -> each.weight() == Observation.Weight.IMPOSSIBLE);
            return new Candidate(number, changes, possible);
        }

        Suggestion suggestion(String typed) {
            List<String> parts = new ArrayList<>();
            for (int place = 0; place < Layout.LENGTH; place++) {
                char wanted = number.twelve().charAt(place);
                if (wanted != typed.charAt(place)) {
                    parts.add("character " + (place + 1) + " may be " + named(wanted) + " that looks like "
                            + named(typed.charAt(place)));
                }
            }
            String sentence = String.join(", ", parts);
            return new Suggestion(number, Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1) + ".");
        }

        private static String named(char c) {
            return (Character.isDigit(c) ? "the digit " : "the letter ") + c;
        }
    }
}
