package org.keelweigh.decision.opinion;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * How far two rankings of the same alternatives agree.
 *
 * @param tauB Kendall's rank correlation with ties, −1 (reversed) to 1 (the same order):
 *     {@code τ_b = (concordant − discordant) / √((n₀ − n₁)(n₀ − n₂))} with {@code n₀} all pairs and {@code n₁},
 *     {@code n₂} the pairs tied in the one and the other; empty if a ranking ties everything (Kendall 1945)
 * @param sameLeader whether some alternative is first, alone or tied, in both
 */
public record Agreement(OptionalDouble tauB, boolean sameLeader) {

    /**
     * Compares two rankings.
     *
     * @param one ranks by alternative, 1 is best
     * @param other ranks of the same alternatives
     * @throws IllegalArgumentException if the lengths differ
     */
    public static Agreement between(List<Integer> one, List<Integer> other) {
        if (one.size() != other.size()) {
            throw new IllegalArgumentException("There are " + one.size() + " ranks to compare with " + other.size());
        }
        boolean sameLeader = IntStream.range(0, one.size()).anyMatch(a -> one.get(a) == 1 && other.get(a) == 1);
        return new Agreement(tauB(one, other), sameLeader);
    }

    private static OptionalDouble tauB(List<Integer> one, List<Integer> other) {
        long balance = 0;
        long untiedInOne = 0;
        long untiedInOther = 0;
        for (int a = 0; a < one.size(); a++) {
            for (int b = 0; b < a; b++) {
                int first = Integer.signum(one.get(a) - one.get(b));
                int second = Integer.signum(other.get(a) - other.get(b));
                balance += (long) first * second;
                untiedInOne += Math.abs(first);
                untiedInOther += Math.abs(second);
            }
        }
        return untiedInOne == 0 || untiedInOther == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(balance / Math.sqrt((double) untiedInOne * untiedInOther));
    }
}
