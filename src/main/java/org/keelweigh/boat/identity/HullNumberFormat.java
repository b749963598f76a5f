package org.keelweigh.boat.identity;

/** Names the layouts a hull identification number has had since 1972. */
public enum HullNumberFormat {
    /** Twelve characters ending in month letter, year digit and model year (33 CFR 181.25, since 1984). */
    CURRENT("the present US layout: month letter, year digit, model year"),
    /** Twelve characters ending in month and year as digits (1972 to July 1984; secondary sources). */
    STRAIGHT_YEAR("the straight-year layout of 1972 to 1984: month and year as digits"),
    /** Twelve characters ending in M, model year and month letter (1972 to July 1984; secondary sources). */
    MODEL_YEAR_LETTER("the model-year layout of 1972 to 1984: the letter M, model year, month letter"),
    /** Two country letters before the twelve characters of {@link #CURRENT} (ISO 10087). */
    INTERNATIONAL("the international layout: country letters, then month letter, year digit, model year");

    private final String words;

    HullNumberFormat(String words) {
        this.words = words;
    }

    /** Describes the layout in words that complete a sentence such as "this is …". */
    public String words() {
        return words;
    }
}
