package org.keelweigh.appraisal;

/**
 * Something nobody said and that was taken as usual, so that it can be corrected where it is read.
 *
 * @param field the field's path in the document it belongs to, such as {@code trip.outingsPerYear}
 * @param sentence what was assumed, with its unit
 */
public record Assumption(String field, String sentence) {}
