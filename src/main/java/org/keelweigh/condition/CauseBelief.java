package org.keelweigh.condition;

/**
 * How likely a hidden cause is.
 *
 * @param id the cause's id
 * @param before its chance when nothing was observed, in (0, 1)
 * @param now its chance after the evidence, in [0, 1]
 */
public record CauseBelief(String id, double before, double now) {}
