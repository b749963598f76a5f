package org.keelweigh.shortlist;

/**
 * A person as stored: somebody who paddles, carries or decides.
 *
 * @param id which one
 * @param shortlist the shortlist they belong to
 * @param version counts their saves, from 0
 * @param data what people typed
 */
public record Person(PersonId id, ShortlistId shortlist, long version, PersonData data) {}
