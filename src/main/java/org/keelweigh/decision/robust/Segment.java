package org.keelweigh.decision.robust;

/**
 * A stretch of a weight over which one alternative is first.
 *
 * @param from 0 to 1
 * @param to 0 to 1, not below {@code from}
 * @param winner alternative; at both borders it ties with the neighbour's winner
 */
public record Segment(double from, double to, int winner) {}
