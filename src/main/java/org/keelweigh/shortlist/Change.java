package org.keelweigh.shortlist;

import java.time.Instant;

/**
 * One save in the history of a shortlist, candidate or person.
 *
 * @param version the version that the save made
 * @param at when
 * @param who by whom
 * @param document the whole document as saved
 */
public record Change(long version, Instant at, String who, String document) {}
