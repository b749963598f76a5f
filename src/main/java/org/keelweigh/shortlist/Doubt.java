package org.keelweigh.shortlist;

/**
 * Something typed that cannot be right, or probably is not.
 *
 * @param field the field's path in the document, such as {@code boat.lengthM}
 * @param refused whether it cannot be kept; otherwise it is kept and the person is asked to look again
 * @param sentence what is wrong and what to do, in the person's units
 */
public record Doubt(String field, boolean refused, String sentence) {}
