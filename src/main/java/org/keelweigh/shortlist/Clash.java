package org.keelweigh.shortlist;

/**
 * A field that two people changed to different values at the same time.
 *
 * @param field the field's path in the document, such as {@code boat.lengthM} or {@code findings.hull-crack}
 * @param mine the value that was not saved
 * @param theirs the value that stands
 */
public record Clash(String field, String mine, String theirs) {}
