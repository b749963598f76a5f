package org.keelweigh.listing;

import java.util.BitSet;

/** Characters of the text that already belong to a number somebody understood. */
final class Claims {

    private final BitSet claimed = new BitSet();

    void claim(int start, int end) {
        claimed.set(start, end);
    }

    void claim(Claims others) {
        claimed.or(others.claimed);
    }

    boolean free(int start, int end) {
        int next = claimed.nextSetBit(start);
        return next < 0 || next >= end;
    }
}
