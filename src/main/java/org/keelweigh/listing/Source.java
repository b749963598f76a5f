package org.keelweigh.listing;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A listing in two spellings of equal length, so that places in one are places in the other: as pasted, and plain
 * (small letters, one kind of quote, dash and blank).
 */
record Source(String original, String plain) {

    /** What lies beyond is not read: no listing is longer, and the work stays bounded. */
    static final int LONGEST_READ = 20_000;

    private static final Pattern LAST_WORD = Pattern.compile("([a-z]{1,12})$");
    private static final Set<String> ABBREVIATIONS =
            Set.of("wt", "cap", "approx", "max", "len", "ca", "incl", "lb", "lbs", "ft", "w", "l", "appr", "abt");

    static Source of(String listing) {
        String original = listing.length() > LONGEST_READ ? listing.substring(0, LONGEST_READ) : listing;
        StringBuilder plain = new StringBuilder(original.length());
        for (int i = 0; i < original.length(); i++) {
            plain.append(leader(original, i) ? ' ' : plain(original.charAt(i)));
        }
        return new Source(original, plain.toString());
    }

    /** Dots that lead from a label to its figure. */
    private static boolean leader(String text, int i) {
        return text.charAt(i) == '.'
                && (i > 0 && text.charAt(i - 1) == '.' || i + 1 < text.length() && text.charAt(i + 1) == '.');
    }

    private static char plain(char c) {
        if (c >= '\uFF10' && c <= '\uFF19') {
            return (char) (c - '\uFF10' + '0');
        }
        return switch (c) {
            case '\u2018', '\u2019', '\u2032', '\u00B4', '`' -> '\'';
            case '\u201C', '\u201D', '\u2033' -> '"';
            case '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '\u2212' -> '-';
            case '\u00D7', '*' -> 'x';
            case '\n' -> '\n';
            case '\r' -> ' ';
            default -> Character.isISOControl(c) || Character.isSpaceChar(c) ? ' ' : Character.toLowerCase(c);
        };
    }

    /** What stands in the same clause before a place, at most so many characters and not before {@code floor}. */
    String clauseBefore(int place, int most, int floor) {
        int from = Math.max(Math.max(0, floor), place - most);
        for (int i = place - 1; i >= from; i--) {
            if (endsClause(i)) {
                return plain.substring(i + 1, place);
            }
        }
        return plain.substring(Math.min(from, place), place);
    }

    /** What stands in the same clause after a place, at most so many characters. */
    String clauseAfter(int place, int most) {
        int to = Math.min(plain.length(), place + most);
        for (int i = place; i < to; i++) {
            if (endsClause(i)) {
                return plain.substring(place, i);
            }
        }
        return plain.substring(place, to);
    }

    /** What stands in the same sentence before a place, at most so many characters. */
    String sentenceBefore(int place, int most) {
        int from = Math.max(0, place - most);
        for (int i = place - 1; i >= from; i--) {
            if (endsSentence(i)) {
                return plain.substring(i + 1, place);
            }
        }
        return plain.substring(from, place);
    }

    /** What stands in the same sentence after a place, at most so many characters. */
    String sentenceAfter(int place, int most) {
        int to = Math.min(plain.length(), place + most);
        for (int i = place; i < to; i++) {
            if (endsSentence(i)) {
                return plain.substring(place, i);
            }
        }
        return plain.substring(place, to);
    }

    private boolean endsClause(int i) {
        char c = plain.charAt(i);
        return endsSentence(i)
                || c == '('
                || c == ')'
                || c == ',' && !digitAt(i + 1)
                || c == '-' && blankAt(i - 1) && blankAt(i + 1);
    }

    private boolean endsSentence(int i) {
        return switch (plain.charAt(i)) {
            case ';', '!', '?', '\n', '|' -> true;
            case '.' -> !digitAt(i + 1) && !abbreviated(i);
            default -> false;
        };
    }

    private boolean abbreviated(int dot) {
        Matcher word = LAST_WORD.matcher(plain).region(Math.max(0, dot - 12), dot);
        if (!word.find() || !ABBREVIATIONS.contains(word.group(1))) {
            return false;
        }
        // "68 lbs. Comes with …" ends a sentence, "wt. 68" and "approx. 5 m" do not
        return digitAt(dot + 1) || blankAt(dot + 1) && digitAt(dot + 2);
    }

    private boolean digitAt(int i) {
        return i < plain.length() && Character.isDigit(plain.charAt(i));
    }

    private boolean blankAt(int i) {
        return i < 0 || i >= plain.length() || plain.charAt(i) == ' ';
    }

    Proposal propose(Fact fact, Proposal.Value value, int start, int end, String note, Certainty certainty) {
        return new Proposal(fact, value, start, end, original.substring(start, end), note, certainty);
    }
}
