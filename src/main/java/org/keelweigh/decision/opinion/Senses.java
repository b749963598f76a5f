package org.keelweigh.decision.opinion;

/** Checks the direction flags that go with a table of measures. */
final class Senses {

    private Senses() {}

    static void require(boolean[] moreIsBetter, int columns) {
        if (moreIsBetter.length != columns) {
            throw new IllegalArgumentException(
                    "There are " + moreIsBetter.length + " direction flags for " + columns + " criteria");
        }
    }
}
