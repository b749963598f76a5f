package org.keelweigh.boat.identity;

/**
 * Tells which characters may stand at which of the twelve places. The ninth character alone decides the layout:
 * A to L, the letter M, or a digit.
 */
enum Layout {
    CURRENT(Layout.MONTHS, Layout.DIGITS, Layout.DIGITS, Layout.DIGITS),
    STRAIGHT_YEAR("01", Layout.DIGITS, Layout.DIGITS, Layout.DIGITS),
    MODEL_YEAR_LETTER("M", Layout.DIGITS, Layout.DIGITS, Layout.MONTHS);

    static final int LENGTH = 12;
    static final int DATE_START = 8;
    static final String DIGITS = "0123456789";
    static final String LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    /** The letter I is September (or April) here although it may not stand in the serial. */
    static final String MONTHS = "ABCDEFGHIJKL";

    static final String SERIAL = "ABCDEFGHJKLMNPRSTUVWXYZ" + DIGITS;
    private static final int SERIAL_START = 3;

    private final String[] dateMarks;

    Layout(String... dateMarks) {
        this.dateMarks = dateMarks;
    }

    /** Characters allowed at a place (0 to 11); digits in the maker's code only outside the United States. */
    String allowedAt(int place, boolean digitsInMaker) {
        if (place < SERIAL_START) {
            return digitsInMaker ? LETTERS + DIGITS : LETTERS;
        }
        return place < DATE_START ? SERIAL : dateMarks[place - DATE_START];
    }

    /** Decides by the ninth character; a character that fits none is judged as the present layout. */
    static Layout of(String twelve) {
        char ninth = twelve.charAt(DATE_START);
        if (ninth == 'M') {
            return MODEL_YEAR_LETTER;
        }
        return DIGITS.indexOf(ninth) >= 0 ? STRAIGHT_YEAR : CURRENT;
    }

    /** First place (0 to 11) where the twelve characters break the layout, or -1. */
    int firstBreak(String twelve, boolean digitsInMaker) {
        for (int place = 0; place < LENGTH; place++) {
            if (allowedAt(place, digitsInMaker).indexOf(twelve.charAt(place)) < 0) {
                return place;
            }
        }
        return this == STRAIGHT_YEAR && !monthExists(twelve) ? DATE_START : -1;
    }

    private static boolean monthExists(String twelve) {
        int month = Integer.parseInt(twelve, DATE_START, DATE_START + 2, 10);
        return month >= 1 && month <= 12;
    }

    /** Says what was found at a place and what belongs there. */
    String complaint(String twelve, int place) {
        String found = "Character " + (place + 1) + " is '" + twelve.charAt(place) + "'; ";
        if (place < SERIAL_START) {
            return found + "characters 1 to 3 are the maker's code, which is three letters.";
        }
        if (place < DATE_START) {
            return found + "characters 4 to 8 are the serial number: digits and letters except I, O and Q.";
        }
        return switch (this) {
            case CURRENT -> found + currentDate(place);
            case STRAIGHT_YEAR ->
                place < DATE_START + 2
                        ? "Characters 9 and 10 are '" + twelve.substring(DATE_START, DATE_START + 2)
                                + "'; when they are digits they are a month from 01 to 12."
                        : found + "after a month in digits come the two digits of the year.";
            case MODEL_YEAR_LETTER ->
                found + "after the letter M come two digits of the model year and a month letter from A to L.";
        };
    }

    private static String currentDate(int place) {
        return switch (place - DATE_START) {
            case 0 -> "it has to be a month letter from A to L, the letter M, or a month in digits.";
            case 1 -> "after the month letter comes the last digit of the year.";
            default -> "characters 11 and 12 are the two digits of the model year.";
        };
    }
}
