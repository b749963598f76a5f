package org.keelweigh.ui.pairs;

import org.keelweigh.shortlist.Display;

/** How much more one step is worth than another, in the words that people answer with. */
enum HowMuch {
    FAR(5, "far more, about 5 times"),
    CLEARLY(3, "clearly more, about 3 times"),
    SLIGHTLY(1.5, "a bit more, about 1½ times");

    private static final double ALIKE = 1.15;

    private final double times;
    private final String words;

    HowMuch(double times, String words) {
        this.times = times;
        this.words = words;
    }

    double times() {
        return times;
    }

    String words() {
        return words;
    }

    /** Says how one thing stands to another, whichever of the two is worth more. */
    static String compared(String one, String other, double times) {
        if (times < 1) {
            return compared(other, one, 1 / times);
        }
        return times < ALIKE
                ? one + " is worth about as much as " + other
                : one + " is worth about " + number(times) + " times as much as " + other;
    }

    private static String number(double times) {
        double tenths = Math.round(10 * times) / 10.0;
        return Display.number(tenths, tenths == Math.rint(tenths) || tenths >= 10 ? 0 : 1);
    }
}
