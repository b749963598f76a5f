package org.keelweigh.shortlist;

/**
 * A shortlist as stored: the frame in which boats are compared.
 *
 * @param id which one
 * @param version counts its saves, from 0
 * @param data what people typed
 */
public record Shortlist(ShortlistId id, long version, ShortlistData data) {}
