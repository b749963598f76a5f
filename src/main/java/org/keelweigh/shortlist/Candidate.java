package org.keelweigh.shortlist;

/**
 * A candidate as stored: one boat on one shortlist.
 *
 * @param id which one
 * @param shortlist the shortlist it stands on
 * @param version counts its saves, from 0
 * @param data what people typed
 */
public record Candidate(CandidateId id, ShortlistId shortlist, long version, CandidateData data) {}
