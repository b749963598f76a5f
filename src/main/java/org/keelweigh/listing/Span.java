package org.keelweigh.listing;

import java.util.List;

/** A stretch of text that a finder has claimed. */
record Span(int start, int end) {

    boolean overlaps(int from, int to) {
        return start < to && from < end;
    }

    static boolean free(List<Span> taken, int from, int to) {
        return taken.stream().noneMatch(span -> span.overlaps(from, to));
    }
}
