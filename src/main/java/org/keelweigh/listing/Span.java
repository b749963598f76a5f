package org.keelweigh.listing;

/** A stretch of text. */
record Span(int start, int end) {}
