package org.keelweigh.shortlist;

/**
 * Told after facts of a shortlist were saved, deleted or restored.
 *
 * @param shortlist the shortlist
 * @param who by whom
 */
public record FactsChanged(ShortlistId shortlist, String who) {}
