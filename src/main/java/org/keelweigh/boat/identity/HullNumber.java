package org.keelweigh.boat.identity;

import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A hull identification number whose characters fit one of the published layouts. That the format fits says
 * nothing about whether the number was given to this boat.
 *
 * <p>Sources: 33 CFR 181.25 (present layout); the two layouts before August 1984 and the layout of ISO 10087 are
 * taken from secondary descriptions.
 *
 * @param country two letters in front (ISO 10087), if any
 * @param makerCode three characters: letters, and digits only behind a country other than US
 * @param serial five characters: digits and letters except I, O and Q
 * @param dateMarks the last four characters, which carry month, year and model year
 */
public record HullNumber(Optional<String> country, String makerCode, String serial, String dateMarks) {

    private static final int PRESENT_LAYOUT_SINCE = 84;
    private static final int RULES_SINCE = 72;

    /**
     * Checks every character.
     *
     * @throws IllegalArgumentException naming the first character that breaks the layout
     */
    public HullNumber {
        String twelve = makerCode + serial + dateMarks;
        if (makerCode.length() != 3 || serial.length() != 5 || dateMarks.length() != 4) {
            throw new IllegalArgumentException("a hull number has 3 + 5 + 4 characters, not " + makerCode.length()
                    + " + " + serial.length() + " + " + dateMarks.length());
        }
        if (country.isPresent() && !country.get().matches("[A-Z]{2}")) {
            throw new IllegalArgumentException("the country has to be two capital letters");
        }
        Layout layout = Layout.of(twelve);
        int place = layout.firstBreak(twelve, digitsInMaker(country));
        if (place >= 0) {
            throw new IllegalArgumentException(layout.complaint(twelve, place));
        }
    }

    static boolean digitsInMaker(Optional<String> country) {
        return country.isPresent() && !country.get().equals("US");
    }

    static HullNumber of(Optional<String> country, String twelve) {
        return new HullNumber(
                country, twelve.substring(0, 3), twelve.substring(3, 8), twelve.substring(Layout.DATE_START));
    }

    /** Tells the layout; country letters before one of the two old layouts leave it the old layout. */
    public HullNumberFormat format() {
        return switch (layout()) {
            case CURRENT -> country.isPresent() ? HullNumberFormat.INTERNATIONAL : HullNumberFormat.CURRENT;
            case STRAIGHT_YEAR -> HullNumberFormat.STRAIGHT_YEAR;
            case MODEL_YEAR_LETTER -> HullNumberFormat.MODEL_YEAR_LETTER;
        };
    }

    Layout layout() {
        return Layout.of(twelve());
    }

    /** The twelve characters of 33 CFR 181.25, without country. */
    public String twelve() {
        return makerCode + serial + dateMarks;
    }

    /** Writes the number as a plate does: twelve characters, or country, hyphen and twelve characters. */
    public String text() {
        return country.map(letters -> letters + "-").orElse("") + twelve();
    }

    /** Month of certification or manufacture, 1 to 12; in the model-year layout A is August. */
    public int month() {
        return switch (layout()) {
            case CURRENT -> Layout.MONTHS.indexOf(dateMarks.charAt(0)) + 1;
            case STRAIGHT_YEAR -> Integer.parseInt(dateMarks, 0, 2, 10);
            case MODEL_YEAR_LETTER -> (Layout.MONTHS.indexOf(dateMarks.charAt(3)) + 7) % 12 + 1;
        };
    }

    /**
     * Model year as four digits, absent in the straight-year layout. In the present layout 84 to 99 are read as
     * 1984 to 1999 and 00 to 83 as 2000 to 2083 (our rule: the layout did not exist before 1984).
     */
    public Optional<Integer> modelYear() {
        return switch (layout()) {
            case CURRENT -> {
                int pair = Integer.parseInt(dateMarks, 2, 4, 10);
                yield Optional.of(pair >= PRESENT_LAYOUT_SINCE ? 1900 + pair : 2000 + pair);
            }
            case STRAIGHT_YEAR -> Optional.empty();
            case MODEL_YEAR_LETTER -> Optional.of(1900 + Integer.parseInt(dateMarks, 1, 3, 10));
        };
    }

    /**
     * Years of certification or manufacture that the marks allow, likeliest first.
     *
     * <p>Present layout: the year with the right last digit among model year, one before, two before, one after
     * (our rule); empty if none fits. Model-year layout: letters A to E (August to December) fall in the calendar
     * year before the model year (derived from a model year that starts on 1 August). Straight year: 19yy, and
     * 20yy too where yy is below 72, since numbers began in 1972.
     */
    public List<Integer> certificationYears() {
        return switch (layout()) {
            case CURRENT -> {
                int model = modelYear().orElseThrow();
                int digit = dateMarks.charAt(1) - '0';
                yield IntStream.of(model, model - 1, model - 2, model + 1)
                        .filter(year -> year % 10 == digit)
                        .boxed()
                        .toList();
            }
            case STRAIGHT_YEAR -> {
                int pair = Integer.parseInt(dateMarks, 2, 4, 10);
                yield pair < RULES_SINCE ? List.of(1900 + pair, 2000 + pair) : List.of(1900 + pair);
            }
            case MODEL_YEAR_LETTER -> List.of(modelYear().orElseThrow() - (month() >= 8 ? 1 : 0));
        };
    }

    /** Month and likeliest year of certification or manufacture; empty if the year cannot be told. */
    public Optional<YearMonth> certified() {
        return certificationYears().stream().findFirst().map(year -> YearMonth.of(year, month()));
    }
}
