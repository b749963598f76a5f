package org.keelweigh.haul;

/**
 * For how long lifting goes on, with the frequency multipliers of the revised lifting equation (Table 5 of its manual).
 */
public enum LiftDuration {
    /** Up to 1 hour. */
    SHORT(
            new double[] {1, .97, .94, .91, .88, .84, .8, .75, .7, .6, .52, .45, .41, .37, 0, 0, 0},
            new double[] {1, .97, .94, .91, .88, .84, .8, .75, .7, .6, .52, .45, .41, .37, .34, .31, .28}),
    /** More than 1 and up to 2 hours. */
    MODERATE(
            new double[] {.95, .92, .88, .84, .79, .72, .6, .5, .42, .35, .3, .26, 0, 0, 0, 0, 0},
            new double[] {.95, .92, .88, .84, .79, .72, .6, .5, .42, .35, .3, .26, .23, .21, 0, 0, 0}),
    /** More than 2 and up to 8 hours. */
    LONG(
            new double[] {.85, .81, .75, .65, .55, .45, .35, .27, .22, .18, 0, 0, 0, 0, 0, 0, 0},
            new double[] {.85, .81, .75, .65, .55, .45, .35, .27, .22, .18, .15, .13, 0, 0, 0, 0, 0});

    private static final double[] PER_MINUTE = {.2, .5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15};

    private final double[] handsLow;
    private final double[] handsHigh;

    LiftDuration(double[] handsLow, double[] handsHigh) {
        this.handsLow = handsLow;
        this.handsHigh = handsHigh;
    }

    /**
     * Tells the frequency multiplier; straight lines between the table's rows, 0.2 a minute for anything slower, 0
     * above 15.
     *
     * @param perMinute lifts in a minute, 0 or more
     * @param high whether the hands begin at or above 75 cm (30 in)
     */
    public double multiplier(double perMinute, boolean high) {
        double[] table = high ? handsHigh : handsLow;
        if (perMinute <= PER_MINUTE[0]) {
            return table[0];
        }
        for (int i = 1; i < PER_MINUTE.length; i++) {
            if (perMinute <= PER_MINUTE[i]) {
                double part = (perMinute - PER_MINUTE[i - 1]) / (PER_MINUTE[i] - PER_MINUTE[i - 1]);
                return table[i - 1] + part * (table[i] - table[i - 1]);
            }
        }
        return 0;
    }
}
