package org.keelweigh.boat.identity;

/**
 * Another reading of the characters that would fit.
 *
 * @param number the number as it would be
 * @param explanation which characters were taken for which, and why
 */
public record Suggestion(HullNumber number, String explanation) {}
