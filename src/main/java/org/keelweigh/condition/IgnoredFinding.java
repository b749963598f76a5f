package org.keelweigh.condition;

/**
 * A finding that does not count, and why.
 *
 * @param finding the finding
 * @param why a sentence for people
 */
public record IgnoredFinding(Finding finding, String why) {}
