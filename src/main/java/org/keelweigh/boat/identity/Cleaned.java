package org.keelweigh.boat.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Typed characters after capitals, blanks, hyphens, a label and the country letters have been dealt with. */
record Cleaned(Optional<String> country, String twelve, List<String> told) {

    /** Longer texts are no slip of the pen; they are not judged character by character. */
    static final int LONGEST_SHOWN = 40;

    private static final String HYPHENS = "-_/.\u00AD\u2010\u2011\u2012\u2013\u2014\u2015\u2212";

    static Cleaned of(String typed) {
        String text = typed.length() > 4 * LONGEST_SHOWN ? typed.substring(0, 4 * LONGEST_SHOWN) : typed;
        List<String> told = new ArrayList<>();
        text = capitals(withoutBlanks(text, told), told);
        text = withoutLabel(text, told);
        Optional<String> country = Optional.empty();
        if (text.length() > 3 && isHyphen(text.charAt(2)) && twoLetters(text)) {
            country = Optional.of(text.substring(0, 2));
            text = text.substring(3);
        }
        text = withoutHyphens(text, told);
        if (country.isEmpty() && text.length() == Layout.LENGTH + 2 && twoLetters(text)) {
            country = Optional.of(text.substring(0, 2));
            text = text.substring(2);
        }
        country.ifPresent(letters -> told.add("The country letters " + letters
                + " in front were set apart; they are not part of the 12 characters."));
        return new Cleaned(country, text, List.copyOf(told));
    }

    private static String withoutBlanks(String text, List<String> told) {
        StringBuilder kept = new StringBuilder();
        text.strip().codePoints().filter(c -> !blank(c)).forEach(kept::appendCodePoint);
        if (kept.length() != text.length()) {
            told.add("Blanks were left out.");
        }
        return kept.toString();
    }

    private static boolean blank(int c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c) || Character.isISOControl(c) || c == 0x200B;
    }

    /** Only a to z: other scripts have small letters whose capitals look Latin, and must not pass as such. */
    private static String capitals(String text, List<String> told) {
        StringBuilder raised = new StringBuilder(text);
        boolean any = false;
        for (int i = 0; i < raised.length(); i++) {
            char c = raised.charAt(i);
            if (c >= 'a' && c <= 'z') {
                raised.setCharAt(i, (char) (c - 'a' + 'A'));
                any = true;
            }
        }
        if (any) {
            told.add("Small letters were read as capitals.");
        }
        return raised.toString();
    }

    private static String withoutLabel(String text, List<String> told) {
        for (String label : List.of("HIN:", "HIN#", "CIN:", "WIN:")) {
            if (text.startsWith(label)) {
                told.add("The label in front of the number was left out.");
                return text.substring(label.length());
            }
        }
        return text;
    }

    private static String withoutHyphens(String text, List<String> told) {
        StringBuilder kept = new StringBuilder();
        text.chars().filter(c -> !isHyphen((char) c)).forEach(c -> kept.append((char) c));
        if (kept.length() != text.length()) {
            told.add("Hyphens, strokes or dots were left out; they are not part of the 12 characters.");
        }
        return kept.toString();
    }

    private static boolean isHyphen(char c) {
        return HYPHENS.indexOf(c) >= 0;
    }

    private static boolean twoLetters(String text) {
        return Layout.LETTERS.indexOf(text.charAt(0)) >= 0 && Layout.LETTERS.indexOf(text.charAt(1)) >= 0;
    }
}
